/** The place of the feed lines: its part of the page is loaded when it is first opened. */
import { type ComponentType, useEffect, useState } from "react";

export function LinesPlace() {
  const [Lines, setLines] = useState<{ Component: ComponentType } | "missing" | null>(null);
  useEffect(() => {
    let here = true;
    import("../catalogue/Lines").then(
      (part) => here && setLines({ Component: part.Lines }),
      () => here && setLines("missing"),
    );
    return () => {
      here = false;
    };
  }, []);
  if (Lines === null) return <p role="status">The lines are being fetched.</p>;
  if (Lines === "missing")
    return <p role="alert">This part of the page could not be loaded. Connect once more, then open it again.</p>;
  return <Lines.Component />;
}
