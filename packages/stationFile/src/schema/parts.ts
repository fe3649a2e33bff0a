/** Parts of the path. The first key of each entry is its kind. */
import * as z from "zod";
import { chokeRange } from "../catalogue/ranges";
import { kindEntry, mapOr, textOr } from "./choice";
import { entry } from "./entry";
import { lineValue } from "./line";
import { places } from "./places";
import { points, spectrum } from "./spectrum";
import { count, fileName, name, note, pair, quantity, quantityOrUnknown, span, word } from "./values";

/** Keys of every part. */
const everyPart = { name: name.optional(), note: note.optional(), state: word("in line", "bypassed").optional() };

export const loss = quantity("decibels", { most: 200 });
const power = quantity("power", { above: 0 });
const q = quantity("number", { above: 0, most: 1e6 });
const resistance = quantity("impedance", { above: 0 });

const line = entry("A line", {
  line: lineValue,
  length: quantity("length", { above: 0, most: 20_000 }),
  route: places(2).optional(),
  condition: word("dry", "wet", "unknown").optional(),
  "excess loss": quantity("lossPerLength").optional(),
  temperature: quantity("temperature").optional(),
  lies: word("in air", "in the sun", "buried", "in a conduit", "on a drum").optional(),
  ...everyPart,
});

const stub = entry("A stub", {
  stub: lineValue,
  length: quantity("length", { above: 0, most: 20_000 }),
  "far end": word("open", "shorted"),
  ...everyPart,
});

const connector = entry("A connector", {
  connector: name,
  count: count(1, 100).optional(),
  loss: loss.optional(),
  ...everyPart,
});

const meter = entry("A meter", {
  meter: name,
  directivity: quantity("decibels", { most: 80 }).optional(),
  note: everyPart.note,
  state: everyPart.state,
});

const filter = entry("A filter", { filter: name, loss: loss.optional(), file: fileName.optional(), ...everyPart });

const arrestor = entry("An arrestor", {
  arrestor: word("gas tube", "gap", "quarter-wave stub"),
  capacitance: quantity("capacitance", { least: 0 }).optional(),
  sparkover: quantity("voltage").optional(),
  earth: name.optional(),
  ...everyPart,
});

const bond = entry("A bond", { bond: name, strap: quantity("length", { least: 0 }).optional(), ...everyPart });

const chokeImpedance = entry("A choke's impedance", {
  resistance: spectrum("impedance", { least: 0 }),
  reactance: spectrum("impedance").optional(),
});

const choke = entry("A choke", {
  choke: textOr(
    quantityOrUnknown("impedance", { above: 0 }, chokeRange.quantity),
    mapOr(chokeImpedance, points("impedance", { above: 0 }), (value) =>
      Object.keys(value).every((key) => !/^\d/.test(key)),
    ),
  ),
  "heat limit": power.optional(),
  length: quantity("length", { least: 0 }).optional(),
  ...everyPart,
});

const balun = entry("A balun", {
  balun: pair("impedance", { above: 0 }),
  kind: word("current", "voltage").optional(),
  choking: spectrum("impedance", { above: 0 }).optional(),
  loss: loss.optional(),
  "heat limit": power.optional(),
  ...everyPart,
});

const transformer = entry("A transformer", {
  transformer: pair("impedance", { above: 0 }),
  loss: loss.optional(),
  "winding inductance": quantity("inductance").optional(),
  "leakage inductance": quantity("inductance").optional(),
  capacitor: quantity("capacitance").optional(),
  sides: word("joined", "isolated").optional(),
  "heat limit": power.optional(),
  ...everyPart,
});

const adjustableCapacitor = entry("An adjustable capacitor", { range: span("capacitance"), Q: q.optional() });
const adjustableCoil = entry("An adjustable coil", { range: span("inductance"), Q: q.optional() });
const tunerValues = entry("The setting of a tuner", {
  capacitors: z
    .array(quantity("capacitance"), { error: () => "a list of values, [120 pF, 80 pF]" })
    .max(4)
    .optional(),
  coils: z
    .array(quantity("inductance"), { error: () => "a list of values, [3.2 uH]" })
    .max(4)
    .optional(),
});

const tuner = entry("A tuner", {
  tuner: word("L", "T", "pi", "series-section"),
  capacitors: adjustableCapacitor.optional(),
  coil: adjustableCoil.optional(),
  output: word("coaxial", "balanced").optional(),
  set: textOr(word("least loss", "bypassed"), tunerValues).optional(),
  "voltage limit": quantity("voltage").optional(),
  ...everyPart,
});

/** A lumped component: a coil, a capacitor or a resistor. */
export const lumped = kindEntry("A component", [
  entry("A coil", { coil: quantity("inductance"), Q: q.optional() }),
  entry("A capacitor", { capacitor: quantity("capacitance"), Q: q.optional() }),
  entry("A resistor", { resistor: resistance }),
] as const);

const series = entry("A series component", { series: lumped, ...everyPart });
const across = entry("A component across the line", { across: lumped, ...everyPart });
const twoPort = entry("A two-port", { "two-port": name, file: fileName, note: everyPart.note, state: everyPart.state });

export const partEntries = [
  line,
  connector,
  meter,
  filter,
  arrestor,
  bond,
  choke,
  balun,
  transformer,
  tuner,
  stub,
  series,
  across,
  twoPort,
] as const;

export type FilePart = z.output<(typeof partEntries)[number]>;
