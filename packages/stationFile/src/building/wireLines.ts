/** Lines of wires other than the plain pair, as written, to what the engine computes with. */
import type { FourWireLine, Quantity, ShieldedPairLine, TwistedPairLine, WireOverPlaneLine } from "@feedpath/engine";
import type { KeyPath } from "../reading/sourceText";
import type { FileOwnLine } from "../schema/line";
import { formatAmount } from "../units/formatQuantity";
import type { LineConductor } from "../units/lineConductor";
import { type Build, fault, fill } from "./build";
import { air, dielectricOf } from "./dielectrics";
import { overallDiameter, roundConductor } from "./lineConductors";
import { checkSpacing, type LineSpot, sleeveOf } from "./lineModels";
import { metalNamed, outerConductor } from "./outerConductors";

type Of<Key extends string> = Extract<FileOwnLine, Readonly<Record<Key, unknown>>>;

const around = ({ build, path }: LineSpot, line: Pick<Of<"four wires">, "dielectric">) =>
  line.dielectric ? dielectricOf(build, line.dielectric, [...path, "dielectric"]) : air;

/** Insulation that this kind of line has no place for. */
function mustBeBare({ build, path }: LineSpot, { conductor }: LineConductor, key: string): void {
  if (!conductor.insulation) return;
  const message =
    "This kind of line is computed with bare wires: leave their insulation out, or write the line as a pair.";
  build.report([...path, key], "value", fault(message, "a bare wire, 2 mm copper"));
}

export function twistedPair(spot: LineSpot, line: Of<"twisted pair">): TwistedPairLine {
  const written = line["twisted pair"];
  const wire = roundConductor(written);
  const sleeve = sleeveOf(written, overallDiameter(wire) / 2);
  if (!sleeve) {
    const message = "The wires of a twisted pair lie against each other: they need their insulation.";
    spot.build.report([...spot.path, "twisted pair"], "value", fault(message, "0.5 mm copper in 0.3 mm polyethylene"));
  }
  const cover = sleeve ?? { outerRadius: overallDiameter(wire), dielectric: air };
  const least = 4 * cover.outerRadius;
  if (line.turn.low < least) {
    const message = `Two wires of ${formatAmount(Number((2 * cover.outerRadius).toPrecision(4)), "length")} cannot be twisted with so short a turn.`;
    spot.build.report([...spot.path, "turn"], "value", fault(message, `at least ${formatAmount(least, "length")}`));
  }
  return { kind: "twisted pair", wire, sleeve: cover, turn: line.turn.value };
}

export function wireOverPlane(spot: LineSpot, line: Of<"wire over plane">): WireOverPlaneLine {
  const key = "wire over plane";
  mustBeBare(spot, line[key], key);
  const wire = roundConductor(line[key]);
  if (line.height.low <= overallDiameter(wire) / 2) {
    const message = "The height of a wire over a plane is that of its axis: it must be greater than its radius.";
    const expected = `more than ${formatAmount(overallDiameter(wire) / 2, "length")}`;
    spot.build.report([...spot.path, "height"], "value", fault(message, expected));
  }
  const name = fill<string>(spot.build, line.plane, {
    place: `${spot.place}.model.plane`,
    name: `metal of the plane of ${spot.name}`,
    value: "copper",
    says: "copper",
    reason: "not given",
  });
  const plane = metalNamed(spot.build, name.trim(), line.height, [...spot.path, "plane"]);
  return { kind: key, wire, height: line.height, plane, dielectric: around(spot, line) };
}

export function fourWires(spot: LineSpot, line: Of<"four wires">): FourWireLine {
  const key = "four wires";
  mustBeBare(spot, line[key], key);
  const wire = roundConductor(line[key]);
  checkApart(spot.build, [...spot.path, "square"], line.square, overallDiameter(wire));
  const joined = fill<"diagonals" | "neighbours">(spot.build, line.joined, {
    place: `${spot.place}.model.joined`,
    name: `wires joined in ${spot.name}`,
    value: "diagonals",
    says: "across the diagonals",
    reason: "not given: the usual way, which keeps the field inside",
  });
  return { kind: "four-wire", wire, side: line.square, joined, dielectric: around(spot, line) };
}

function checkApart(build: Build, path: KeyPath, side: Quantity, diameter: number): void {
  if (side.low > diameter) return;
  const message =
    "The side of the square is measured between centres: it must be greater than the diameter of the wires.";
  build.report(path, "value", fault(message, `more than ${formatAmount(diameter, "length")}`));
}

export function shieldedPair(spot: LineSpot, line: Of<"shielded pair">): ShieldedPairLine {
  const { build, path } = spot;
  const key = "shielded pair";
  mustBeBare(spot, line[key], key);
  const wire = roundConductor(line[key]);
  const diameter = overallDiameter(wire);
  checkSpacing(build, path, line.spacing, diameter);
  if (line.outer.diameter.low <= line.spacing.high + diameter) {
    const message = "The outer conductor is given by its inner diameter: both wires must fit into it.";
    const least = formatAmount(Number((line.spacing.high + diameter).toPrecision(6)), "length");
    build.report([...path, "outer"], "value", fault(message, `more than ${least}`));
  }
  const outer = outerConductor(build, line.outer, [...path, "outer"]);
  const dielectric = dielectricOf(build, line.dielectric, [...path, "dielectric"]);
  return { kind: key, wire, spacing: line.spacing, outer, dielectric };
}
