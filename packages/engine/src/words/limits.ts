/** What the model takes for granted, and what it leaves out. English. */
import { megahertz, significantNumber } from "../quantity/format";
import { isPair } from "../station/isPair";
import type { Part } from "../station/path";
import { beyondSoilData } from "../station/soilAtFrequency";
import type { Assumption, Station } from "../station/station";
import { asSentence, theName } from "./phrases";

interface PointFacts {
  /** Hz */
  readonly frequency?: number;
  readonly tuner: { readonly name: string } | null;
  readonly notes: readonly string[];
  readonly antenna: {
    readonly build: {
      readonly notComputed: readonly string[];
      readonly assumed: readonly { readonly name: string; readonly value: string; readonly reason: string }[];
      readonly outside: readonly { readonly feed: string }[];
      readonly structure: { readonly wires: readonly { readonly insulation: SleeveFacts | null }[] };
    };
  };
  readonly resolved: {
    readonly notes: readonly string[];
    readonly notComputed: readonly string[];
    readonly feedsInUse: readonly string[];
  };
  readonly parts: readonly {
    readonly edge: { readonly kind: string; readonly inUse: boolean; readonly part: Part | null };
  }[];
}

interface SleeveFacts {
  readonly lossTangent?: number;
}

const assumption = (name: string, value: string, reason: string, place: string): Assumption => ({
  name,
  value,
  reason,
  place,
});

/** Assumptions of the model itself, after those of the file's reader. */
export function assumptionsOfModel(station: Station, point: PointFacts, linePlaced: boolean): Assumption[] {
  const made: Assumption[] = [];
  if (linePlaced) {
    made.push(
      assumption(
        "line run",
        "straight down from the feed point, then level",
        "no route is given; for the drawing only",
        "path",
      ),
    );
  }
  const told = station.assumptions.some((a) => a.place.startsWith("transmitter.power"));
  if (station.transmitter.powerAtSwr.length === 0 && !told) {
    made.push(
      assumption("power", "delivered in full at any SWR", "the file gives no `power at SWR`", "transmitter.powerAtSwr"),
    );
  }
  if (point.tuner) {
    made.push(assumption(point.tuner.name, "matches without loss", "the tuner's own loss is not computed yet", "path"));
  }
  if (point.antenna.build.structure.wires.some((w) => w.insulation && w.insulation.lossTangent === undefined)) {
    made.push(assumption("insulation of the wires", "without loss", "its loss tangent is not known", "antennas"));
  }
  const known = point.frequency === undefined ? null : beyondSoilData(station.ground, point.frequency);
  if (known) made.push(soilBeyond(known, point.frequency!));
  for (const { name, value, reason } of point.antenna.build.assumed)
    made.push(assumption(name, value, reason, "antennas"));
  for (const note of point.resolved.notes) made.push(assumption("path", note, "from the file", "path"));
  for (const [note, names] of sameNotes(point.notes)) {
    made.push(assumption(names.join(", "), note.replace(/\.$/, ""), "nothing more is known of it", "path"));
  }
  return made;
}

/** What is taken of a soil at a frequency its values are not given for. Hz. */
function soilBeyond(known: { readonly from: number; readonly to: number }, frequency: number): Assumption {
  const span = known.from === known.to ? megahertz(known.from) : `${megahertz(known.from)} to ${megahertz(known.to)}`;
  const nearest = megahertz(frequency < known.from ? known.from : known.to);
  return assumption("soil", `as at ${nearest}`, `its values are known for ${span} only`, "ground");
}

/** Remarks "NAME: text" by their text, so that what holds for several parts is told once. */
function sameNotes(notes: readonly string[]): Map<string, string[]> {
  const byText = new Map<string, string[]>();
  for (const note of notes) {
    const [name, ...rest] = note.split(": ");
    const text = rest.join(": ");
    byText.set(text, [...(byText.get(text) ?? []), name!]);
  }
  return byText;
}

/** Said first of all when the antenna could not be worked out as well as it should be. */
export function shortfallSays(f: {
  readonly ohms: number | null;
  readonly power: number | null;
  readonly decibels: number | null;
}): string[] {
  return [
    ...(f.ohms === null
      ? []
      : [
          `This antenna could be worked out only roughly, though its mesh was made finer as far as that helps: its impedance is in doubt by about ${significantNumber(f.ohms, 2)} Ω, and every number with it.`,
        ]),
    ...(f.decibels === null
      ? []
      : [
          `The gain of this antenna is in doubt by about ${significantNumber(f.decibels, 1)} dB in its strongest direction.`,
        ]),
    ...(f.power === null
      ? []
      : [
          `The watts of this antenna do not add up as well as they should: ${significantNumber(100 * f.power, 2)} % are missing or too many.`,
        ]),
  ];
}

/** A file says that a line is wet, or that nobody knows; how much water it holds it does not say, so that it is computed as dry. */
function wetLines(point: PointFacts): string[] {
  const lines = point.parts.flatMap(({ edge }) => (edge.inUse && edge.part?.kind === "line" ? [edge.part] : []));
  const told = (condition: "wet" | "unknown", says: string, then: string): string[] => {
    const names = lines.filter((line) => line.condition === condition).map(({ name }) => theName(name));
    return names.length === 0 ? [] : [`Water in ${names.join(", ")}: ${says}, and how much is not known. ${then}`];
  };
  return [
    ...told(
      "wet",
      "the file calls it wet",
      "It is computed as dry and takes more than that: its `excess loss`, measured, or a line of its own with `water: 1 %` in the dielectric shows how much.",
    ),
    ...told("unknown", "its condition is not known", "It is computed as dry; wet it would take more."),
  ];
}

export function notCoveredOf(point: PointFacts, skipped: readonly string[]): string[] {
  const reached = new Set(point.antenna.build.outside.map((o) => o.feed));
  const modelled = point.resolved.feedsInUse.every((feed) => reached.has(feed));
  const coaxial =
    !modelled && point.parts.some((p) => p.edge.inUse && p.edge.part?.kind === "line" && !isPair(p.edge.part));
  const choked = point.parts.some((p) => p.edge.inUse && p.edge.kind === "choke");
  return [
    ...point.antenna.build.notComputed.map(asSentence),
    ...point.resolved.notComputed.map(asSentence),
    ...(coaxial
      ? [
          choked
            ? "Current on the outside of the line: no route in the file says where the line runs. The choke is taken to stop it; the numbers hold only then."
            : "Current on the outside of the line: no route in the file says where the line runs. The numbers hold only while it carries none; the path has no choke.",
        ]
      : []),
    ...wetLines(point),
    ...skipped.map(
      (name) => `The range of ${name} reaches values that cannot be worked out: that end is left out of the range.`,
    ),
    "House, trees and other wires that are not in the file.",
  ];
}
