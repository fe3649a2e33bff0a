/** Parts of the path as written to parts as the engine sees them. */
import type {
  Adjustable,
  ArrestorPart,
  BalunPart,
  ChokePart,
  ConnectorPart,
  FilterPart,
  LinePart,
  Lumped,
  Part,
  Quantity,
  StubPart,
  TransformerPart,
  TunerPart,
} from "@feedpath/engine";
import { exactly } from "@feedpath/engine";
import { chokeRange } from "../catalogue/ranges";
import type { KeyPath } from "../reading/sourceText";
import type { FilePart } from "../schema/parts";
import type { DimensionName } from "../units/dimensions";
import { type Build, fault, fill, fillQuantity, listUnknown } from "./build";
import { buildLine } from "./lineEntry";

/** Where a part stands: in the file, and in the station. */
export interface Spot {
  readonly build: Build;
  readonly path: KeyPath;
  readonly place: string;
  readonly name: string;
}

type Of<Key extends string> = Extract<FilePart, Readonly<Record<Key, unknown>>>;
type Base = Pick<Part, "name" | "note" | "state">;

/** Kind key of a part: its first key. */
export function kindOfPart(part: FilePart): Part["kind"] {
  const kinds: readonly Part["kind"][] = [
    "line",
    "connector",
    "meter",
    "filter",
    "arrestor",
    "bond",
    "choke",
    "balun",
    "transformer",
    "tuner",
    "stub",
    "series",
    "across",
    "two-port",
  ];
  return kinds.find((kind) => Object.hasOwn(part, kind)) ?? "line";
}

export function buildPart(spot: Spot, part: FilePart): Part {
  const base: Base = { name: spot.name, note: part.note ?? "", state: part.state ?? "in line" };
  if ("line" in part) return line(spot, base, part);
  if ("stub" in part) return stub(spot, base, part);
  if ("connector" in part) return connector(spot, base, part);
  if ("meter" in part) return { ...base, kind: "meter", directivity: part.directivity ?? null };
  if ("filter" in part) return filter(spot, base, part);
  if ("arrestor" in part) return arrestor(spot, base, part);
  if ("bond" in part) return { ...base, kind: "bond", earth: part.bond, strap: part.strap ?? null };
  if ("choke" in part) return choke(spot, base, part);
  if ("balun" in part) return balun(spot, base, part);
  if ("transformer" in part) return transformer(spot, base, part);
  if ("tuner" in part) return tuner(spot, base, part);
  if ("series" in part) return { ...base, kind: "series", component: lumpedOf(spot, part.series) };
  if ("across" in part) return { ...base, kind: "across", component: lumpedOf(spot, part.across) };
  return { ...base, kind: "two-port", file: part.file };
}

/** Fills a number of a part. */
function number(
  spot: Spot,
  written: Quantity | undefined,
  dimension: DimensionName,
  key: string,
  what: string,
  value: number,
  reason: string,
) {
  return fillQuantity(spot.build, written, dimension, {
    place: `${spot.place}.${key}`,
    name: `${what} of ${spot.name}`,
    value,
    reason,
  });
}

/** Fills a word of a part. */
function word<Word extends string>(
  spot: Spot,
  written: Word | undefined,
  key: string,
  what: string,
  value: Word,
  reason: string,
): Word {
  return fill<Word>(spot.build, written, {
    place: `${spot.place}.${key}`,
    name: `${what} of ${spot.name}`,
    value,
    says: value,
    reason,
  });
}

const noLoss = "not given: taken as none";

function line(spot: Spot, base: Base, part: Of<"line">): LinePart {
  return {
    ...base,
    kind: "line",
    line: buildLine(spot.build, part.line, [...spot.path, "line"], `${spot.place}.line`, spot.name),
    length: part.length,
    route: part.route ?? [],
    condition: word(spot, part.condition, "condition", "condition", "dry", "not given: a dry, sound line"),
    excessLoss: number(
      spot,
      part["excess loss"],
      "lossPerLength",
      "excessLoss",
      "excess loss",
      0,
      "not given: as when new",
    ),
    temperature: part.temperature ?? null,
  };
}

function stub(spot: Spot, base: Base, part: Of<"stub">): StubPart {
  return {
    ...base,
    kind: "stub",
    line: buildLine(spot.build, part.stub, [...spot.path, "stub"], `${spot.place}.line`, spot.name),
    length: part.length,
    farEnd: part["far end"],
  };
}

function connector(spot: Spot, base: Base, part: Of<"connector">): ConnectorPart {
  const count = fill<number>(spot.build, part.count, {
    place: `${spot.place}.count`,
    name: `count of ${spot.name}`,
    value: 1,
    says: "1",
    reason: "not given",
  });
  return {
    ...base,
    kind: "connector",
    series: part.connector,
    count,
    loss: number(spot, part.loss, "decibels", "loss", "loss", 0, noLoss),
  };
}

function filter(spot: Spot, base: Base, part: Of<"filter">): FilterPart {
  if ((part.loss === undefined) === (part.file === undefined)) {
    const message = "A filter has its loss, or a file with its measured network: write one of the two.";
    spot.build.report(spot.path, "value", fault(message, "loss: 0.15 dB, or file"));
  }
  return { ...base, kind: "filter", response: part.filter, loss: part.loss ?? null, file: part.file ?? null };
}

function arrestor(spot: Spot, base: Base, part: Of<"arrestor">): ArrestorPart {
  return {
    ...base,
    kind: "arrestor",
    form: part.arrestor,
    capacitance: number(spot, part.capacitance, "capacitance", "capacitance", "capacitance", 0, noLoss),
    sparkover: part.sparkover ?? null,
    earth: part.earth ?? null,
  };
}

function choke(spot: Spot, base: Base, part: Of<"choke">): ChokePart {
  const impedance = impedanceOf(part.choke);
  const { resistance } = impedance;
  if (resistance.kind === "constant") {
    const reason = `${chokeRange.source}; ${chokeRange.status}`;
    listUnknown(
      spot.build,
      resistance.quantity,
      `${spot.place}.resistance`,
      `impedance of ${spot.name}`,
      "impedance",
      reason,
    );
  }
  return { ...base, kind: "choke", ...impedance, heatLimit: part["heat limit"] ?? null, length: part.length ?? null };
}

function impedanceOf(written: Of<"choke">["choke"]): Pick<ChokePart, "resistance" | "reactance"> {
  if ("value" in written) return { resistance: { kind: "constant", quantity: written }, reactance: null };
  if ("kind" in written) return { resistance: written, reactance: null };
  return { resistance: written.resistance, reactance: written.reactance ?? null };
}

function balun(spot: Spot, base: Base, part: Of<"balun">): BalunPart {
  const [transmitterSide, antennaSide] = part.balun;
  return {
    ...base,
    kind: "balun",
    form: word(spot, part.kind, "form", "kind", "current", "not given: the commoner kind, common practice, no source"),
    transmitterSide,
    antennaSide,
    choking: part.choking ?? null,
    loss: number(spot, part.loss, "decibels", "loss", "loss", 0, noLoss),
    heatLimit: part["heat limit"] ?? null,
  };
}

function transformer(spot: Spot, base: Base, part: Of<"transformer">): TransformerPart {
  const [transmitterSide, antennaSide] = part.transformer;
  return {
    ...base,
    kind: "transformer",
    transmitterSide,
    antennaSide,
    loss: number(spot, part.loss, "decibels", "loss", "loss", 0, noLoss),
    windingInductance: part["winding inductance"] ?? null,
    leakageInductance: part["leakage inductance"] ?? null,
    capacitor: part.capacitor ?? null,
    sides: word(spot, part.sides, "sides", "sides", "joined", "not given: one winding with a tap"),
    heatLimit: part["heat limit"] ?? null,
  };
}

function tuner(spot: Spot, base: Base, part: Of<"tuner">): TunerPart {
  const { set } = part;
  const values = typeof set === "object" ? { capacitors: set.capacitors ?? [], coils: set.coils ?? [] } : set;
  return {
    ...base,
    kind: "tuner",
    network: part.tuner,
    capacitors: adjustable(spot, part.capacitors, "capacitors"),
    coil: adjustable(spot, part.coil, "coil"),
    output: word(spot, part.output, "output", "output", "coaxial", "not given"),
    set: fill<TunerPart["set"]>(spot.build, values, {
      place: `${spot.place}.set`,
      name: `setting of ${spot.name}`,
      value: "least loss",
      says: "least loss",
      reason: "not given: of all settings that match, the one with the least loss",
    }),
    voltageLimit: part["voltage limit"] ?? null,
  };
}

type Range = { readonly range: { readonly from: number; readonly to: number }; readonly Q?: Quantity | undefined };

export function adjustable(spot: Spot, written: Range | undefined, key: string): Adjustable | null {
  if (!written) return null;
  return { from: written.range.from, to: written.range.to, q: quality(spot, written.Q, `${key}.q`, key) };
}

/** The Q of a component; without one it is lossless, which is listed. */
export function quality(spot: Spot, written: Quantity | undefined, key: string, what: string): Quantity {
  return fill<Quantity>(spot.build, written, {
    place: `${spot.place}.${key}`,
    name: `Q of the ${what} of ${spot.name}`,
    value: exactly(Number.POSITIVE_INFINITY, "assumed"),
    says: "lossless",
    reason: noLoss,
  });
}

type FileLumped = Of<"series">["series"];

export function lumpedOf(spot: Spot, written: FileLumped, key = "component"): Lumped {
  const none = exactly(Number.POSITIVE_INFINITY);
  const nothing: Lumped = { coil: null, capacitor: null, resistor: null, q: none };
  if ("resistor" in written) return { ...nothing, resistor: written.resistor };
  if ("coil" in written) return { ...nothing, coil: written.coil, q: quality(spot, written.Q, `${key}.q`, "coil") };
  return { ...nothing, capacitor: written.capacitor, q: quality(spot, written.Q, `${key}.q`, "capacitor") };
}
