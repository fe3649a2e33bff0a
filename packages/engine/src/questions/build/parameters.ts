/** What `build` is asked with, and which line is meant. */
import type { LineEntry } from "../../lines/lineModel";
import type { LinePart, Path, StubPart } from "../../station/path";
import type { Station } from "../../station/station";
import type { Context, ParameterDefinition } from "../common/question";

export const buildParameters: readonly ParameterDefinition[] = [
  {
    name: "line",
    title: "line",
    dimension: "name",
    words: [],
    least: 0,
    most: 0,
    otherwise: "the longest of the path",
  },
  {
    name: "frequency",
    title: "frequency",
    dimension: "frequency",
    words: [],
    least: 1,
    most: 1e12,
    otherwise: "that of the station",
  },
  {
    name: "temperature",
    title: "temperature of the conductors",
    dimension: "temperature",
    words: [],
    least: 200,
    most: 500,
    otherwise: "that of the part in the file, else 20 °C",
  },
  {
    name: "length",
    title: "length",
    dimension: "length",
    words: [],
    least: 0.001,
    most: 1e6,
    otherwise: "that of the part in the file, else 10 m",
  },
  {
    name: "dip",
    title: "first dip of this length, far end open",
    dimension: "frequency",
    words: [],
    least: 1e3,
    most: 1e11,
    otherwise: "nothing measured",
  },
];

export interface ChosenLine {
  readonly entry: LineEntry;
  /** The part of the path that is meant; null for a line of the catalogue or an own one. */
  readonly part: LinePart | StubPart | null;
}

/** Lines and stubs of the path in reading order, branches included. */
function linesOfPath(path: Path): (LinePart | StubPart)[] {
  const own = path.parts.filter((part) => part.kind === "line" || part.kind === "stub");
  const { end } = path;
  const branches = end.kind === "switch" ? end.positions : "branches" in end ? end.branches : {};
  return [...own, ...Object.values(branches).flatMap(linesOfPath)];
}

const plain = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, " ");

/** The line meant by `asked`: a part's name, a line of the file, one of the catalogue, in this order; without it the longest of the path. */
export function chosenLine(
  station: Station,
  asked: string | null,
  context: Context,
): ChosenLine | { readonly refused: string; readonly mend: string } {
  const parts = linesOfPath(station.path);
  if (asked === null) {
    const [longest] = parts.toSorted((a, b) => b.length.value - a.length.value);
    if (longest) return { entry: longest.line, part: longest };
    const own = station.lines?.[0];
    return own ? { entry: own, part: null } : { refused: "the path has no line", mend: mendOf(station, context, "RG") };
  }
  const part = parts.find((p) => plain(p.name) === plain(asked));
  if (part) return { entry: part.line, part };
  const entries = [...(station.lines ?? []), ...(context.lines ?? []), ...parts.map((p) => p.line)];
  const entry = entries.find((e) => plain(e.designation) === plain(asked));
  if (entry) return { entry, part: null };
  return { refused: `no line is called "${asked}"`, mend: mendOf(station, context, asked) };
}

/** Names there are: all of the file, and of the catalogue those that share a word or number with what was asked. */
function mendOf(station: Station, context: Context, asked: string): string {
  const own = [...linesOfPath(station.path).map((p) => p.name), ...(station.lines ?? []).map((e) => e.designation)];
  const tokens = asked.toLowerCase().match(/[a-z]{2,}|\d{2,}/g) ?? [];
  const catalogue = (context.lines ?? []).map((e) => e.designation);
  const near = catalogue.filter((name) => tokens.some((token) => name.toLowerCase().includes(token)));
  const names = [...new Set([...own, ...(near.length > 0 ? near : catalogue).slice(0, 8)])];
  return names.length > 0 ? `one of: ${names.join(", ")}` : "a `line` in the path of the file";
}
