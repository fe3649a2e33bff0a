/** What a line is built of, as written, to what the engine computes with. */
import type {
  CoaxialLine,
  Conductor,
  DataSheetLine,
  Dielectric,
  PairInsulation,
  ParallelWireLine,
  Quantity,
} from "@feedpath/engine";
import type { KeyPath } from "../reading/sourceText";
import type { FileOwnLine } from "../schema/line";
import { formatAmount } from "../units/formatQuantity";
import type { LineConductor } from "../units/lineConductor";
import { type Build, fault, fill } from "./build";
import { air, dielectricOf } from "./dielectrics";
import { overallDiameter, roundConductor } from "./lineConductors";
import { outerConductor } from "./outerConductors";

/** Where a line stands: in the file and in the station; its name begins sentences about it. */
export interface LineSpot {
  readonly build: Build;
  readonly path: KeyPath;
  readonly place: string;
  readonly name: string;
}

type Of<Key extends string> = Extract<FileOwnLine, Readonly<Record<Key, unknown>>>;

export function dataSheetLine(spot: LineSpot, line: Of<"impedance">): DataSheetLine {
  const side = fill<"coaxial" | "balanced">(spot.build, line.side, {
    place: `${spot.place}.model.side`,
    name: `side of ${spot.name}`,
    value: "coaxial",
    says: "coaxial",
    reason: "a line given by its data sheet is taken as coaxial; write side: balanced for a pair",
  });
  const points = line.loss.kind === "points" ? line.loss.points : [];
  const loss = points.map(({ frequency, quantity }) => ({ frequency, decibelsPerMetre: quantity }));
  return { kind: "data sheet", side, impedance: line.impedance, velocityFactor: line.velocity, loss };
}

/** Constants of the plastic over a wire. */
const plasticOf = ({ material, permittivity, lossTangent }: NonNullable<Conductor["insulation"]>): Dielectric => ({
  name: material,
  permittivity: permittivity.value,
  lossTangent: lossTangent?.value ?? 0,
});

/** m: a bare wire's own radius. */
export function sleeveOf({ conductor }: LineConductor, radius: number) {
  const { insulation } = conductor;
  return insulation && { outerRadius: radius + insulation.wall.value, dielectric: plasticOf(insulation) };
}

export function pairLine({ build, path }: LineSpot, line: Of<"wire">): ParallelWireLine {
  const wire = roundConductor(line.wire);
  const sleeve = sleeveOf(line.wire, overallDiameter(wire) / 2);
  checkSpacing(build, path, line.spacing, wire.strands ? overallDiameter(wire) : line.wire.conductor.diameter.high);
  const insulation = insulationOf(build, path, line, sleeve);
  const dielectric = line.dielectric ? dielectricOf(build, line.dielectric, [...path, "dielectric"]) : air;
  return { kind: "parallel-wire", wire, spacing: line.spacing, dielectric, ...(insulation ? { insulation } : {}) };
}

export function checkSpacing(build: Build, path: KeyPath, spacing: Quantity, diameter: number): void {
  if (spacing.low > diameter) return;
  const message =
    "The spacing of a pair is measured between centres: it must be greater than the diameter of its wires.";
  build.report([...path, "spacing"], "value", fault(message, `more than ${formatAmount(diameter, "length")}`));
}

function insulationOf(
  build: Build,
  path: KeyPath,
  { web, spacing }: Of<"wire">,
  sleeve: ReturnType<typeof sleeveOf>,
): PairInsulation | null {
  if (sleeve && spacing.high < 2 * sleeve.outerRadius) {
    const message = "The insulations of the two wires would run into each other at this spacing.";
    const least = formatAmount(2 * sleeve.outerRadius, "length");
    build.report([...path, "spacing"], "value", fault(message, `at least ${least}`));
  }
  if (!web) return sleeve && { form: "sleeves", ...sleeve };
  if (!sleeve) {
    const message =
      "The web of a pair holds insulated wires: give the wire its insulation, which is what the web is of.";
    build.report([...path, "web"], "key", fault(message, "wire: 1 mm copper in 0.8 mm polyethylene"));
    return null;
  }
  if (web.thickness.high > 2 * sleeve.outerRadius) {
    const message = "A web is no thicker than the insulation that it joins.";
    const most = formatAmount(2 * sleeve.outerRadius, "length");
    build.report([...path, "web", "thickness"], "value", fault(message, `at most ${most}`));
  }
  return { form: "web", ...sleeve, thickness: web.thickness.value, filled: web.filled?.value ?? 1 };
}

export function coaxialLine({ build, path }: LineSpot, line: Of<"inner">): CoaxialLine {
  const inner = roundConductor(line.inner);
  const outer = outerConductor(build, line.outer, [...path, "outer"]);
  checkInside(build, [...path, "outer"], line.outer.diameter, line.inner, overallDiameter(inner));
  return { kind: "coaxial", inner, outer, dielectric: dielectricOf(build, line.dielectric, [...path, "dielectric"]) };
}

function checkInside(build: Build, path: KeyPath, outer: Quantity, inner: LineConductor, over: number): void {
  if (outer.low > (inner.strands === null ? inner.conductor.diameter.high : over)) return;
  const message = "The outer conductor is given by its inner diameter: it must be greater than the inner conductor.";
  build.report(path, "value", fault(message, `more than ${formatAmount(over, "length")}`));
}
