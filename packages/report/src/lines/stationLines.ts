/** Which lines one can look at beside a station, and the run of line that it has. */
import type { LineEntry, LinePart, Path, Station } from "@feedpath/engine";
import { type ListedLine, ownFamily } from "./compareLines";

/** Lines a station describes itself, by name or where they lie in its path, then the catalogue. */
export function listLines(
  station: Station | null,
  catalogue: readonly (LineEntry & { readonly family: string })[],
): ListedLine[] {
  const known = new Set(catalogue.map(({ designation }) => designation));
  const inPath = station ? linesOf(station.path).map(({ line }) => line) : [];
  const described = [...(station?.lines ?? []), ...inPath.filter(({ designation }) => !known.has(designation))];
  const entries = new Map(described.map((entry) => [entry.designation, entry]));
  const own = [...entries.values()].map((entry) => ({ entry, family: ownFamily, own: true }));
  // An own line may be a catalogue line with something added, a price: it stands for both.
  const rest = catalogue.filter(({ designation }) => !entries.has(designation));
  return [...own, ...rest.map((entry) => ({ entry, family: entry.family, own: false }))];
}

function linesOf({ parts, end }: Path): LinePart[] {
  const branches =
    end.kind === "switch" ? Object.values(end.positions) : "branches" in end ? Object.values(end.branches) : [];
  return [...parts.filter((part) => part.kind === "line"), ...branches.flatMap(linesOf)];
}

/** Hz of the station's first band, and its longest line, branches included; null where it has none. */
export function stationRun({ bands, path }: Station): { readonly at: number | null; readonly line: LinePart | null } {
  const lines = linesOf(path);
  const longest = lines.reduce<LinePart | null>(
    (most, line) => (most !== null && most.length.value >= line.length.value ? most : line),
    null,
  );
  return { at: bands[0]?.frequency.value ?? null, line: longest };
}

/** Hz: the usual bands from 160 m to 70 cm, and where lines are looked at when nothing is said. */
export const usualFrequencies: readonly number[] = [1.9e6, 3.65e6, 7.1e6, 14.2e6, 28.5e6, 50.2e6, 145e6, 432e6];
export const usualFrequency = 14.2e6;
