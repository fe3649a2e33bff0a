import type { KeyboardEvent } from "react";
import { useBench } from "./useBench";

/** Ctrl or Command with Z and Y in the file's text: the bench's own steps, which outlive a reload. */
export function useFileKeys(): (event: KeyboardEvent) => void {
  const bench = useBench();
  return (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const key = event.key.toLowerCase();
    if (key !== "z" && key !== "y") return;
    event.preventDefault();
    if (key === "y" || event.shiftKey) bench.redo();
    else bench.undo();
  };
}
