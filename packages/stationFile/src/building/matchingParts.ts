/** Baluns, transformers and tuners. */
import type { BalunPart, Part, TransformerPart, TunerPart } from "@feedpath/engine";
import type { FilePart } from "../schema/parts";
import { fill } from "./build";
import { adjustable } from "./components";
import { fillNumber, fillWord, noLoss, type Spot } from "./spot";

type Of<Key extends string> = Extract<FilePart, Readonly<Record<Key, unknown>>>;
type Base = Pick<Part, "name" | "note" | "state">;

export function balun(spot: Spot, base: Base, part: Of<"balun">): BalunPart {
  const [transmitterSide, antennaSide] = part.balun;
  return {
    ...base,
    kind: "balun",
    form: fillWord(
      spot,
      part.kind,
      "form",
      "kind",
      "current",
      "not given: the commoner kind, common practice, no source",
    ),
    transmitterSide,
    antennaSide,
    choking: part.choking ?? null,
    loss: fillNumber(spot, part.loss, "decibels", "loss", "loss", 0, noLoss),
    heatLimit: part["heat limit"] ?? null,
  };
}

export function transformer(spot: Spot, base: Base, part: Of<"transformer">): TransformerPart {
  const [transmitterSide, antennaSide] = part.transformer;
  return {
    ...base,
    kind: "transformer",
    transmitterSide,
    antennaSide,
    loss: fillNumber(spot, part.loss, "decibels", "loss", "loss", 0, noLoss),
    windingInductance: part["winding inductance"] ?? null,
    leakageInductance: part["leakage inductance"] ?? null,
    capacitor: part.capacitor ?? null,
    sides: fillWord(spot, part.sides, "sides", "sides", "joined", "not given: one winding with a tap"),
    heatLimit: part["heat limit"] ?? null,
  };
}

export function tuner(spot: Spot, base: Base, part: Of<"tuner">): TunerPart {
  const { set } = part;
  const values = typeof set === "object" ? { capacitors: set.capacitors ?? [], coils: set.coils ?? [] } : set;
  return {
    ...base,
    kind: "tuner",
    network: part.tuner,
    capacitors: adjustable(spot, part.capacitors, "capacitors"),
    coil: adjustable(spot, part.coil, "coil"),
    output: fillWord(spot, part.output, "output", "output", "coaxial", "not given"),
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
