/** Conductors: in one text, or with their keys. */
import type { Conductor, Quantity } from "@feedpath/engine";
import * as z from "zod";
import { conductorOf, diameterRule, insulationNames, insulationOf, parseConductor, wallRule } from "../units/conductor";
import { faulty, type Parsed, parsed } from "../units/fault";
import { textOr } from "./choice";
import { entry } from "./entry";
import { quantity, text, word } from "./values";
import { written } from "./written";

const sleeve = entry("Insulation", {
  wall: quantity("length", wallRule),
  material: word(...(insulationNames as [string, ...string[]])).optional(),
  permittivity: quantity("number", { least: 1, most: 100 }).optional(),
  "loss tangent": quantity("number", { least: 0, most: 1 }).optional(),
});

export const longConductor = {
  diameter: quantity("length", diameterRule),
  material: written<string>(text("a metal"), parsed),
  form: word("wire", "tube").optional(),
  wall: quantity("length", wallRule).optional(),
  insulation: sleeve.optional(),
};

interface LongConductor {
  readonly diameter: Quantity;
  readonly material: string;
  readonly form?: "wire" | "tube" | undefined;
  readonly wall?: Quantity | undefined;
  readonly insulation?: z.output<typeof sleeve> | undefined;
}

/** A conductor from its keys: `{ diameter, material, insulation: { wall, permittivity } }`. */
export function readLongConductor(long: LongConductor): Parsed<Conductor> {
  const { insulation } = long;
  const form = long.form ?? "wire";
  const wall = long.wall ?? null;
  if (wall && form === "wire") return faulty("Only a tube has a wall.", "form: tube");
  if (wall && wall.high > long.diameter.low / 2)
    return faulty("The wall of a tube is at most half of its diameter.", "a thinner wall");
  if (!insulation) return conductorOf(long.diameter, form, long.material, null, wall);
  if (insulation.material === undefined && insulation.permittivity === undefined) {
    return faulty("Insulation needs its material or its permittivity.", "material or permittivity");
  }
  const read = insulationOf(
    insulation.material ?? "insulation",
    insulation.wall,
    insulation.permittivity ?? null,
    insulation["loss tangent"] ?? null,
  );
  return read.ok ? conductorOf(long.diameter, form, long.material, read.value, wall) : read;
}

const longForm = entry("A conductor", longConductor).transform((long, context): Conductor => {
  const read = readLongConductor(long);
  if (read.ok) return read.value;
  context.addIssue({ code: "custom", message: read.fault.message, params: { fault: read.fault, at: "value" } });
  return z.NEVER;
});

export const conductor = textOr(
  written<Conductor>(
    text("a conductor, 2 mm copper in 0.8 mm PVC").meta({
      id: "conductor",
      description: "2 mm copper in 0.8 mm PVC; 30 mm tube aluminium; 2 mm perfect",
      examples: ["2 mm copper", "30 mm tube aluminium", "1.5 mm copper in 0.7 mm PVC"],
    }),
    parseConductor,
  ),
  longForm,
);
