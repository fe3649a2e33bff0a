import { type RefObject, useLayoutEffect, useState } from "react";

/** Width of an element in whole px, followed as it changes; 0 before it is known. */
export function useWidth(element: RefObject<HTMLElement | null>): number {
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const watched = element.current;
    if (!watched) return;
    const measure = () => setWidth(Math.floor(watched.clientWidth));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element]);
  return width;
}
