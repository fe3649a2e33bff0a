/** Antennas: a shape, wires one by one, or several shapes on one feed point, with what hangs on them. */
import type { Quantity } from "@feedpath/engine";
import * as z from "zod";
import { faulty, type Parsed, parsed } from "../units/fault";
import { shown } from "../units/nearest";
import { parseOffset } from "../units/place";
import { kindEntry } from "./choice";
import { entry } from "./entry";
import { lineValue } from "./line";
import { place } from "./places";
import { length, q, shapes, wire, wireEntry } from "./shapes";
import { count, name, quantity, span, word, wordOrQuantity } from "./values";
import { written } from "./written";

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
const circuit = (title: string) =>
  entry(title, {
    coil: quantity("inductance").optional(),
    capacitor: quantity("capacitance").optional(),
    resistor: quantity("impedance", { above: 0 }).optional(),
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
  entry("A coil", {
    coil: quantity("inductance"),
    Q: q.optional(),
    "self-capacitance": quantity("capacitance").optional(),
    ...onAntenna,
  }),
  entry("A capacitor", { capacitor: quantity("capacitance"), Q: q.optional(), ...onAntenna }),
  entry("A resistor", { resistor: quantity("impedance", { above: 0 }), ...onAntenna }),
  entry("A trap", { trap, ...onAntenna }),
  entry("A series circuit", { series: circuit("A series circuit"), ...onAntenna }),
  entry("A parallel circuit", { parallel: circuit("A parallel circuit"), ...onAntenna }),
  entry("A hat", { hat, ...onAntenna }),
] as const);

const sectionLength = quantity("length", { above: 0, most: 20_000 });

/** Lines between feeds, and stubs across one. */
const joinedEntry = kindEntry("An entry of joined", [
  entry("A line between feeds", {
    line: lineValue,
    length: sectionLength,
    from: name,
    to: name,
    crossed: word("yes", "no").optional(),
  }),
  entry("A stub across a feed", {
    stub: lineValue,
    length: sectionLength,
    at: name,
    "far end": word("open", "shorted"),
  }),
  entry("Components between feeds", {
    series: circuit("A series circuit"),
    from: name,
    to: name,
    crossed: word("yes", "no").optional(),
  }),
  entry("Components across a feed", { across: circuit("Components across a feed"), at: name }),
] as const);

/** Keys beside the shape. */
const beside = {
  feed: feed.optional(),
  feeds: z.record(z.string(), feed).optional(),
  against: name.optional(),
  radials: radials.optional(),
  loads: z.array(load, { error: () => "a list of loads" }).optional(),
  joined: z.array(joinedEntry, { error: () => "a list of lines and networks between feeds" }).optional(),
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
export type FileJoined = z.output<typeof joinedEntry>;
export type FileRadials = z.output<typeof radials>;
export type FileWire = z.output<typeof wireEntry>;
