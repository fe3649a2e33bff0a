/** A drawn figure whose pieces answer to being pointed at, here or in the row of parts. */
import { type PointerEvent, useEffect, useRef } from "react";
import { usePointing } from "./usePointing";

export function Picture({ svg }: { readonly svg: string }) {
  const frame = useRef<HTMLDivElement>(null);
  const { names, point } = usePointing();

  // The drawing is text from @feedpath/figures, so that its pieces are marked from outside of React.
  useEffect(() => {
    for (const piece of frame.current?.querySelectorAll<SVGElement>("[data-name]") ?? [])
      piece.classList.toggle("pointed", names.includes(piece.dataset.name ?? ""));
  });

  const over = (event: PointerEvent) => {
    const piece = (event.target as Element).closest<SVGElement>("[data-name]");
    point(piece?.dataset.name ? [piece.dataset.name] : []);
  };
  return (
    <div
      className="picture"
      ref={frame}
      onPointerOver={over}
      onPointerLeave={() => point([])}
      // biome-ignore lint/security/noDangerouslySetInnerHtml: drawn by @feedpath/figures, which escapes every text
      dangerouslySetInnerHTML={{ __html: svg }}
    />
  );
}
