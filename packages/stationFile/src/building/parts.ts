/** Parts of the path as written to parts as the engine sees them. */
import type { ArrestorPart, ChokePart, ConnectorPart, FilterPart, LinePart, Part, StubPart } from "@feedpath/engine";
import { chokeRange } from "../catalogue/ranges";
import type { FilePart } from "../schema/parts";
import { fault, fill, listUnknown } from "./build";
import { lumpedOf } from "./components";
import { buildLine } from "./lineEntry";
import { balun, transformer, tuner } from "./matchingParts";
import { fillNumber, fillWord, noLoss, type Spot } from "./spot";

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

const lineSpot = (spot: Spot, key: "line" | "stub"): Spot => ({
  ...spot,
  path: [...spot.path, key],
  place: `${spot.place}.line`,
});

function line(spot: Spot, base: Base, part: Of<"line">): LinePart {
  return {
    ...base,
    kind: "line",
    line: buildLine(lineSpot(spot, "line"), part.line),
    length: part.length,
    route: part.route ?? [],
    condition: fillWord(spot, part.condition, "condition", "condition", "dry", "not given: dry and sound"),
    excessLoss: fillNumber(
      spot,
      part["excess loss"],
      "lossPerLength",
      "excessLoss",
      "excess loss",
      0,
      "not given: as when new",
    ),
    temperature: part.temperature ?? null,
    ...(part.lies ? { lies: part.lies } : {}),
  };
}

function stub(spot: Spot, base: Base, part: Of<"stub">): StubPart {
  return {
    ...base,
    kind: "stub",
    line: buildLine(lineSpot(spot, "stub"), part.stub),
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
    loss: fillNumber(spot, part.loss, "decibels", "loss", "loss", 0, noLoss),
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
    capacitance: fillNumber(spot, part.capacitance, "capacitance", "capacitance", "capacitance", 0, noLoss),
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
