/** Antennas: a shape, wires one by one, or several shapes on one feed point, with what hangs on them. */
import type { Quantity } from "@feedpath/engine";
import * as z from "zod";
import { faulty, type Parsed, parsed } from "../units/fault";
import { shown } from "../units/nearest";
import { parseOffset } from "../units/place";
import { entry, kindEntry, written } from "./entry";
import {
  conductor,
  count,
  direction,
  longConductor,
  name,
  place,
  places,
  quantity,
  span,
  word,
  wordOrQuantity,
} from "./values";

const length = quantity("length", { above: 0, most: 5000 });
const height = quantity("length", { least: 0, most: 5000 });
const q = quantity("number", { above: 0, most: 1e6 });
const wire = conductor.optional();
const turned = direction.optional();

const spanKeys = {
  height,
  "ends height": height.optional(),
  sag: quantity("length", { least: 0 }).optional(),
  direction: turned,
  wire,
};

const dipole = entry("A dipole", { length, ...spanKeys });
const vee = entry("An inverted vee", { length, height, "ends height": height, direction: turned, wire });
const offCentre = entry("An off-centre dipole", {
  legs: z.tuple([length, length], { error: () => "two lengths in brackets, [first leg, second leg]" }),
  ...spanKeys,
});
const folded = entry("A folded dipole", { length, spacing: length, height, direction: turned, wire });
const endFed = entry("An end-fed wire", { points: places(2), wire });
const vertical = entry("A vertical", {
  length: length.optional(),
  base: height.optional(),
  wire,
  sections: z
    .array(entry("A section", { length, wire: conductor }), { error: () => "a list of sections" })
    .min(1)
    .optional(),
});

/** "corner 2", "middle of side 1"; counted from 1. */
const fedAt = written<{ readonly corner: number } | { readonly side: number }>(
  z
    .string({ error: () => "corner N, or middle of side N" })
    .meta({ pattern: String.raw`^(corner|middle of side) \d+$` }),
  (text): Parsed<{ readonly corner: number } | { readonly side: number }> => {
    const match = /^(corner|middle of side) (\d{1,3})$/.exec(text.trim());
    if (match) return parsed(match[1] === "corner" ? { corner: Number(match[2]) } : { side: Number(match[2]) });
    return faulty(
      `"${shown(text)}" says no spot on the loop. Expected: corner N, or middle of side N.`,
      "corner N, or middle of side N",
    );
  },
);
const loop = entry("A loop", { corners: places(3), "fed at": fedAt, wire });
const smallLoop = entry("A small loop", {
  round: length,
  height,
  plane: turned,
  wire,
  capacitor: entry("The loop's capacitor", { range: span("capacitance"), Q: q.optional() }),
  "joints resistance": quantity("impedance", { least: 0 }).optional(),
});
const beam = entry("A beam", {
  elements: z
    .array(entry("An element", { length, along: quantity("length", { least: -1000, most: 1000 }) }), {
      error: () => "a list of elements",
    })
    .min(1),
  driven: count(1, 1000),
  height,
  boom: turned,
  wire,
  "boom correction": word("insulated", "none").optional(),
});

const wireEntry = entry("A wire", {
  name,
  from: place,
  to: place,
  wire,
  diameter: longConductor.diameter.optional(),
  material: longConductor.material.optional(),
  form: longConductor.form,
  insulation: longConductor.insulation,
});

const shapes = {
  dipole,
  "inverted vee": vee,
  "off-centre dipole": offCentre,
  "folded dipole": folded,
  "end-fed wire": endFed,
  vertical,
  loop,
  "small loop": smallLoop,
  beam,
} as const;

const feed = entry("A feed", { at: place, from: name, into: name });

/** "5 cm under", "2.4 m up", "on the soil". */
const lie = written<Quantity | "on the soil">(
  z
    .string({ error: () => "on the soil, 5 cm under, or 2.4 m up" })
    .meta({ examples: ["on the soil", "5 cm under", "2.4 m up"] }),
  (text): Parsed<Quantity | "on the soil"> => {
    if (text.trim() === "on the soil") return parsed("on the soil");
    const offset = parseOffset(text);
    if (!offset.ok) return offset;
    if (offset.value.axis === 2) return parsed(offset.value.quantity);
    return faulty(
      `"${shown(text)}" is no height. Expected: on the soil, 5 cm under, or 2.4 m up.`,
      "on the soil, 5 cm under, or 2.4 m up",
    );
  },
);

const radials = entry("Radials", {
  count: count(1, 360),
  length,
  wire,
  lie: lie.optional(),
  over: span("angle").optional(),
  bond: name.optional(),
});

const trap = entry("A trap", {
  coil: quantity("inductance"),
  capacitor: quantity("capacitance"),
  Q: q.optional(),
});
const hat = entry("A hat", {
  spokes: count(1, 64),
  length,
  wire,
  ring: word("yes", "no").optional(),
});

const onAntenna = {
  on: name,
  "from feed": wordOrQuantity(["end"], "length", { least: 0 }),
  length: length.optional(),
};

const load = kindEntry("A load", [
  entry("A coil", { coil: quantity("inductance"), Q: q.optional(), ...onAntenna }),
  entry("A capacitor", { capacitor: quantity("capacitance"), Q: q.optional(), ...onAntenna }),
  entry("A resistor", { resistor: quantity("impedance", { above: 0 }), ...onAntenna }),
  entry("A trap", { trap, ...onAntenna }),
  entry("A hat", { hat, ...onAntenna }),
] as const);

/** Keys beside the shape. */
const beside = {
  feed: feed.optional(),
  feeds: z.record(z.string(), feed).optional(),
  against: name.optional(),
  radials: radials.optional(),
  loads: z.array(load, { error: () => "a list of loads" }).optional(),
  at: place.optional(),
};

const shapeEntry = <const Kind extends keyof typeof shapes>(kind: Kind) =>
  entry("An antenna", { [kind]: shapes[kind], ...beside } as { [K in Kind]: (typeof shapes)[K] } & typeof beside);

const bareShape = <const Kind extends keyof typeof shapes>(kind: Kind) =>
  entry("An element", { [kind]: shapes[kind] } as { [K in Kind]: (typeof shapes)[K] });

const elementSchema = kindEntry("An element", [
  bareShape("dipole"),
  bareShape("inverted vee"),
  bareShape("off-centre dipole"),
  bareShape("folded dipole"),
  bareShape("end-fed wire"),
  bareShape("vertical"),
  bareShape("loop"),
  bareShape("small loop"),
  bareShape("beam"),
] as const);

export const antennaSchema = kindEntry("An antenna", [
  shapeEntry("dipole"),
  shapeEntry("inverted vee"),
  shapeEntry("off-centre dipole"),
  shapeEntry("folded dipole"),
  shapeEntry("end-fed wire"),
  shapeEntry("vertical"),
  shapeEntry("loop"),
  shapeEntry("small loop"),
  shapeEntry("beam"),
  entry("An antenna", { wires: z.array(wireEntry, { error: () => "a list of wires" }).min(1), ...beside }),
  entry("An antenna", { elements: z.record(z.string(), elementSchema), ...beside }),
] as const);

export type FileShape = z.output<typeof elementSchema>;
export type FileAntenna = z.output<typeof antennaSchema>;
export type FileLoad = z.output<typeof load>;
export type FileRadials = z.output<typeof radials>;
export type FileWire = z.output<typeof wireEntry>;
