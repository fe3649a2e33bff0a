/** A path with its parts changed, branches included. */
import type { Part, Path, PathEnd } from "./path";

/** `change` gives what stands in the place of a part: itself, another, several. */
export const mapParts = (path: Path, change: (part: Part) => readonly Part[]): Path => ({
  parts: path.parts.flatMap(change),
  end: mapEnd(path.end, change),
});

function mapEnd(end: PathEnd, change: (part: Part) => readonly Part[]): PathEnd {
  const mapped = (paths: Readonly<Record<string, Path>>): Record<string, Path> =>
    Object.fromEntries(Object.entries(paths).map(([name, path]) => [name, mapParts(path, change)]));
  if (end.kind === "feed" || end.kind === "load") return end;
  return end.kind === "switch"
    ? { ...end, positions: mapped(end.positions) }
    : { ...end, branches: mapped(end.branches) };
}
