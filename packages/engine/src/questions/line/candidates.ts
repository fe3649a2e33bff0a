/** The lines that could lie where the present one lies: the file's own, then the catalogue's. */
import type { Side } from "../../chain/resolve";
import { lineConstants } from "../../lines/lineConstants";
import { lineSide } from "../../lines/lineFacts";
import type { LineEntry, LineModel } from "../../lines/lineModel";
import { radiationLoss } from "../../lines/radiationLoss";
import { greatestFrequency } from "../../lines/te11";
import { withPrefix } from "../../quantity/format";
import type { LinePart } from "../../station/path";
import type { Station } from "../../station/station";
import type { CannotWork } from "../common/worked";
import type { Replaced } from "./replaced";

/**
 * How a line would stand in the path: of the transmitter's impedance, of another one, a pair where pairs lie already, or of
 * the other kind of side, which wants something at both ends.
 */
export type Standing = "rated" | "other" | "pair" | "converted";

export interface Candidate {
  readonly entry: LineEntry;
  readonly present: boolean;
  readonly standing: Standing;
  /** Ohm, nominal. */
  readonly impedance: number;
}

/** Relative deviation from the rated load up to which a line counts as of that impedance. */
const sameImpedance = 0.1;

/** Ohm at `frequency` (Hz), or as the data sheet names it. */
export const impedanceOf = (model: LineModel, frequency: number): number =>
  model.kind === "data sheet" ? model.impedance.value : lineConstants(model, frequency).z0.re;

function standingOf(entry: LineEntry, impedance: number, side: Side, rated: number): Standing {
  if (lineSide(entry.model) !== side) return "converted";
  if (side === "balanced") return "pair";
  return Math.abs(impedance - rated) <= sameImpedance * rated ? "rated" : "other";
}

export interface CandidateList {
  readonly candidates: readonly Candidate[];
  /** Why lines of the list are left out, each with its name. */
  readonly leftOut: readonly string[];
}

/** Share of its power that an open pair may radiate and still be taken for a line: our rule. */
const mostRadiated = 0.1;

/** Why a line is no line at the highest frequency (Hz) it is wanted for, over `length` m; null where nothing speaks against it. */
function unfit(
  { model, build }: LineEntry,
  at: { readonly frequency: number; readonly length: number },
): string | null {
  const models = build ? [model, build] : [model];
  const cutOff = Math.min(...models.flatMap((one) => greatestFrequency(one) ?? []));
  if (cutOff < at.frequency) return `above ${withPrefix(cutOff, "Hz", 3)} more than one wave can travel in it`;
  const radiates = models.some(
    (one) => one.kind === "parallel-wire" && radiationLoss(one, at.frequency, at.length).share > mostRadiated,
  );
  return radiates
    ? `so wide a pair would radiate over a tenth of its power at ${withPrefix(at.frequency, "Hz", 3)}`
    : null;
}

interface Asked {
  readonly replaced: Replaced;
  /** Names, with commas or semicolons between them; null for all. */
  readonly names: string | null;
  readonly frequency: number;
  readonly rated: number;
}

/** The present line first. */
export function candidatesOf(
  station: Station,
  catalogue: readonly LineEntry[],
  { replaced, names, frequency, rated }: Asked,
): CandidateList | CannotWork {
  const all = entriesOf(station, catalogue, replaced.part);
  const chosen = names === null ? all : namedOf(all, names);
  if ("refused" in chosen) return chosen;
  const highest = Math.max(...station.bands.map((band) => band.frequency.value));
  const candidates: Candidate[] = [];
  const leftOut: string[] = [];
  for (const entry of chosen) {
    const why = unfit(entry, { frequency: highest, length: replaced.part.length.value });
    if (why !== null)
      leftOut.push(
        `${entry.designation}: ${why}${entry === chosen[0] ? "; as the present line it is worked out all the same" : ""}`,
      );
    if (why !== null && entry !== chosen[0]) continue;
    try {
      const impedance = impedanceOf(entry.model, frequency);
      const standing = standingOf(entry, impedance, replaced.side, rated);
      candidates.push({ entry, present: entry === chosen[0], standing, impedance });
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      leftOut.push(`${entry.designation}: ${error.message}`);
    }
  }
  return { candidates, leftOut };
}

/** Name of the present line as it would be new, where it takes more than a new one. */
export const newOf = (designation: string): string => `new ${designation}`;

/** What the file says of a line goes before what the catalogue says; the present line with the price the file gives it, and new where it takes more than a new one. */
function entriesOf(station: Station, catalogue: readonly LineEntry[], part: LinePart): LineEntry[] {
  const present = part.line;
  const known = new Map<string, LineEntry>();
  for (const entry of [...(station.lines ?? []), ...catalogue])
    if (!known.has(entry.designation)) known.set(entry.designation, entry);
  const own = known.get(present.designation);
  known.delete(present.designation);
  const now = own ? { ...own, ...present } : present;
  const again = part.excessLoss.value > 0 ? [{ ...now, designation: newOf(present.designation) }] : [];
  return [now, ...again, ...known.values()];
}

function namedOf(all: readonly LineEntry[], names: string): LineEntry[] | CannotWork {
  const wanted = names.split(/[,;]/).flatMap((name) => (name.trim() === "" ? [] : [name.trim()]));
  const found = wanted.map((name) => all.find((e) => e.designation.toLowerCase() === name.toLowerCase()));
  const missing = wanted.filter((_, i) => !found[i]);
  if (missing.length > 0)
    return {
      refused: `no line is called ${missing.map((name) => `"${name}"`).join(", ")}`,
      mend: nearTo(all, missing[0]!),
    };
  return [...new Set([all[0]!, ...found.flatMap((entry) => entry ?? [])])];
}

/** Names that share a stretch of letters or figures with the one asked for, else how many there are. */
function nearTo(all: readonly LineEntry[], name: string): string {
  const pieces = name.toLowerCase().match(/[a-z]+|\d+/g) ?? [];
  const alike = all.filter((e) =>
    pieces.some((piece) => piece.length > 1 && e.designation.toLowerCase().includes(piece)),
  );
  const told = (alike.length > 0 ? alike : all).slice(0, 6).map((e) => e.designation);
  return `names of lines in the catalogue or under \`lines\` in the file, such as ${told.join(", ")}`;
}
