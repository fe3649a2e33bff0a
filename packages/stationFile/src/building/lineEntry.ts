/** A line's value as written to what the engine computes with. */
import {
  type Conductor,
  cableDielectric,
  cableDielectrics,
  type Dielectric,
  type LineEntry,
  type LineModel,
  type Quantity,
  type RoundConductor,
  sectionOf,
} from "@feedpath/engine";
import type { KeyPath } from "../reading/sourceText";
import type { FileLine } from "../schema/line";
import { formatQuantity } from "../units/formatQuantity";
import { nearestWord, orList, shown } from "../units/nearest";
import { type Build, fault, fill, list } from "./build";

const ownSource = (value: string) => [{ value, source: "the station file", status: "stated by the owner" }];

export function buildLine(build: Build, line: FileLine, path: KeyPath, place: string, name: string): LineEntry {
  if ("designation" in line) return line;
  if ("impedance" in line) {
    const side = fill<"coaxial" | "balanced">(build, line.side, {
      place: `${place}.model.side`,
      name: `side of ${name}`,
      value: "coaxial",
      says: "coaxial",
      reason: "a line given by its data sheet is taken as coaxial; write side: balanced for a pair",
    });
    return dataSheetLine(line, side);
  }
  if ("spacing" in line) return pairLine(build, line, path, place, name);
  return coaxialLine(build, line, path);
}

function dataSheetLine(line: Extract<FileLine, { impedance: Quantity }>, side: "coaxial" | "balanced"): LineEntry {
  const points = line.loss.kind === "points" ? line.loss.points : [];
  const loss = points.map(({ frequency, quantity }) => ({ frequency, decibelsPerMetre: quantity }));
  const { impedance, velocity: velocityFactor } = line;
  return {
    designation: `${formatQuantity(impedance, "impedance")} line`,
    model: { kind: "data sheet", side, impedance, velocityFactor, loss },
    build: null,
    sources: ownSource("impedance, velocity factor, loss"),
  };
}

/** Dry air, as the engine knows it. */
const air: Dielectric = { name: "air", permittivity: 1, lossTangent: 0 };

/** A round conductor by its nominal diameter: its layers, or solid of one metal. A tube without a wall is as good as solid. */
const round = (conductor: Conductor): RoundConductor =>
  sectionOf(conductor) ?? {
    form: "solid",
    layers: [{ metal: metalOf(conductor), outerRadius: conductor.diameter.value / 2 }],
    holeRadius: 0,
    effectiveRadiusRatio: 1,
    resistanceFactor: 1,
  };

const metalOf = ({ material, conductivity, permeability }: Conductor) => ({
  name: material,
  conductivity,
  permeability,
});

function pairLine(
  build: Build,
  line: Extract<FileLine, { spacing: Quantity }>,
  path: KeyPath,
  place: string,
  name: string,
): LineEntry {
  const { wire, spacing } = line;
  if (spacing.low <= wire.diameter.high) {
    const message =
      "The spacing of a pair is measured between centres: it must be greater than the diameter of its wires.";
    build.report([...path, "spacing"], "value", fault(message, `more than ${formatQuantity(wire.diameter, "length")}`));
  }
  if (wire.insulation) {
    const reason = "the pair is computed with bare wires in air";
    list(build, `${place}.model.wire`, `insulation of the wires of ${name}`, "left out", reason);
  }
  const model: LineModel = { kind: "parallel-wire", wire: round(wire), spacing, dielectric: air };
  return {
    designation: `pair of ${formatQuantity(wire.diameter, "length")} ${wire.material} ${formatQuantity(spacing, "length")} apart`,
    model,
    build: model,
    sources: ownSource("wire and spacing"),
  };
}

function coaxialLine(build: Build, line: Extract<FileLine, { inner: Conductor }>, path: KeyPath): LineEntry {
  const { inner, outer } = line;
  if (outer.diameter.low <= inner.diameter.high) {
    const message = "The outer conductor is given by its inner diameter: it must be greater than the inner conductor.";
    build.report([...path, "outer"], "value", fault(message, "a greater diameter"));
  }
  const model: LineModel = {
    kind: "coaxial",
    inner: round(inner),
    outer: {
      innerRadius: outer.diameter.value / 2,
      wall: Number.POSITIVE_INFINITY,
      metal: metalOf(outer),
      resistanceFactor: 1,
    },
    dielectric: dielectricOf(build, line.dielectric, path),
  };
  const sizes = `${formatQuantity(inner.diameter, "length")} in ${formatQuantity(outer.diameter, "length")}`;
  return { designation: `coaxial line ${sizes}`, model, build: model, sources: ownSource("dimensions and dielectric") };
}

function dielectricOf(
  build: Build,
  written: string | { readonly permittivity: Quantity; readonly "loss tangent": Quantity },
  path: KeyPath,
): Dielectric {
  if (typeof written !== "string") {
    return { name: "own", permittivity: written.permittivity.value, lossTangent: written["loss tangent"].value };
  }
  const known = cableDielectric(written);
  if (known) return { name: known.name, permittivity: known.permittivity, lossTangent: known.lossTangent };
  const names = cableDielectrics.map((dielectric) => dielectric.name);
  const near = nearestWord(written, names);
  const hint = near === null ? `Known: ${orList(names)}.` : `Nearest: ${near}.`;
  const message = `No dielectric "${shown(written)}" is known. ${hint} Or write { permittivity: 2.3, loss tangent: 0.0003 }.`;
  build.report([...path, "dielectric"], "value", fault(message, orList(names), { nearest: near, mend: near }));
  return { name: "air", permittivity: 1, lossTangent: 0 };
}
