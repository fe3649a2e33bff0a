/** The same station with a perfect choke where its line meets the feed point: no current on the outside from there. */
import { exactly, type Spectrum } from "../../quantity/quantity";
import type { ChokePart, Part, Path, PathEnd } from "../../station/path";
import type { Station } from "../../station/station";

const constant = (value: number): Spectrum => ({ kind: "constant", quantity: exactly(value) });

/** Ohm: next to nothing passes it, and the equations keep their figures. */
const perfect: Omit<ChokePart, "name"> = {
  kind: "choke",
  note: "",
  state: "in line",
  resistance: constant(1e8),
  reactance: constant(0),
  heatLimit: null,
  length: null,
};

/** A choke that is the last part already becomes a perfect one: then the wires need no other solution. */
export const withoutOutside = (station: Station): Station => ({ ...station, path: withChoke(station.path) });

function withChoke({ parts, end }: Path): Path {
  if (end.kind !== "feed") return { parts, end: insideOf(end) };
  const last = parts.at(-1);
  return isOpenable(last)
    ? { parts: [...parts.slice(0, -1), { ...perfect, name: last.name }], end }
    : { parts: [...parts, { ...perfect, name: "perfect choke" }], end };
}

const isOpenable = (part: Part | undefined): part is ChokePart => part?.kind === "choke" && part.state === "in line";

function insideOf(end: Exclude<PathEnd, { kind: "feed" }>): PathEnd {
  const inside = (paths: Readonly<Record<string, Path>>): Record<string, Path> =>
    Object.fromEntries(Object.entries(paths).map(([name, path]) => [name, withChoke(path)]));
  if (end.kind === "load") return end;
  return end.kind === "switch"
    ? { ...end, positions: inside(end.positions) }
    : { ...end, branches: inside(end.branches) };
}
