/** The whole file: the one definition that validates, decodes to SI and makes the JSON Schema. */
import * as z from "zod";
import { earthRange, footRange } from "../catalogue/ranges";
import { soils, unknownConductivity, unknownPermittivity } from "../catalogue/soils";
import { faulty, type Parsed, parsed } from "../units/fault";
import { shown } from "../units/nearest";
import { parseQuantity } from "../units/parseQuantity";
import { antennaSchema } from "./antenna";
import { kindEntry, textOr } from "./choice";
import { conductor } from "./conductors";
import { entry } from "./entry";
import { ownLine } from "./line";
import { pathSchema } from "./path";
import { direction, place, places } from "./places";
import { points } from "./spectrum";
import { fileName, name, note, quantity, quantityOrUnknown, span, title, word, wordOrQuantity } from "./values";
import { written } from "./written";

/** Hz: below it nothing here is an antenna; a bandwidth may be less. */
const radio = { least: 1e3 };
const frequency = quantity("frequency", radio);
const swr = quantity("number", { least: 1, most: 1000 });

const band = entry("A band", {
  frequency: frequency.optional(),
  band: span("frequency", radio).optional(),
  set: z.record(z.string(), name).optional(),
});

/** `3 min of 6 min`. */
const onAir = written<{ readonly on: number; readonly of: number }>(
  z.string({ error: () => "two times, 3 min of 6 min" }).meta({ examples: ["3 min of 6 min", "15 s of 30 s"] }),
  (text): Parsed<{ readonly on: number; readonly of: number }> => {
    const expected = "two times, 3 min of 6 min";
    const [first, second, more] = text.split(/\s+of\s+/);
    if (second === undefined || more !== undefined)
      return faulty(`"${shown(text)}" is not "A of B". Expected: ${expected}.`, expected);
    const on = parseQuantity(first ?? "", "time");
    if (!on.ok) return on;
    const of = parseQuantity(second, "time", { above: 0 });
    if (!of.ok) return of;
    if (on.value.value <= of.value.value) return parsed({ on: on.value.value, of: of.value.value });
    return faulty(`"${shown(text)}": the time on the air is longer than the whole.`, expected);
  },
);

const transmitter = entry("A transmitter", {
  power: quantity("power", { above: 0 }),
  duty: quantity("ratio").optional(),
  "on air": onAir.optional(),
  "designed for": quantity("impedance", { above: 0, most: 10_000 }).optional(),
  "power at SWR": z.record(z.string(), quantity("power")).optional(),
  earthed: name.optional(),
  "noise figure": quantity("decibels", { most: 100 }).optional(),
});

const permittivityRule = { least: 1, most: 100 };
const conductivityRule = { most: 100 };
const soilKeys = {
  permittivity: textOr(
    quantityOrUnknown("number", permittivityRule, unknownPermittivity),
    points("number", permittivityRule),
  ),
  conductivity: textOr(
    quantityOrUnknown("conductivity", conductivityRule, unknownConductivity),
    points("conductivity", conductivityRule),
  ),
};

/** Every wave of the spectrum passes every layer. */
const mostLayers = 50;
const layer = entry("A layer", { ...soilKeys, thickness: quantity("length", { above: 0 }).optional() });

const ground = textOr(
  word("free space", "perfect", "unknown", ...soils.map((soil) => soil.name)),
  kindEntry("Ground", [
    entry("Ground", soilKeys),
    entry("Ground", {
      layers: z
        .array(layer, { error: () => "a list of layers from the top" })
        .min(1)
        .max(mostLayers, { error: () => `at most ${mostLayers} layers` }),
    }),
  ] as const),
);

const earthKeys = {
  diameter: quantity("length", { above: 0, most: 1 }).optional(),
  at: place.optional(),
  resistance: quantityOrUnknown("impedance", { above: 0 }, earthRange.quantity).optional(),
};

const earth = entry("An earth", {
  rod: quantity("length", { above: 0, most: 100 }).optional(),
  strip: quantity("length", { above: 0, most: 1000 }).optional(),
  plate: quantity("area").optional(),
  ...earthKeys,
});

const surrounding = kindEntry("A surrounding", [
  entry("A conductor", {
    conductor: name,
    points: places(2),
    wire: conductor,
    foot: quantityOrUnknown("impedance", { above: 0 }, footRange.quantity).optional(),
    insulators: z.array(quantity("length", { above: 0 }), { error: () => "a list of lengths along it" }).optional(),
  }),
  entry("A sheet", { sheet: name, corners: places(3) }),
  entry("A roof", { roof: name, loss: quantity("decibels", { most: 100 }) }),
] as const);

const person = entry("A person", {
  place: name,
  at: place,
  who: word("public", "household", "operator").optional(),
  stays: wordOrQuantity(["all day", "passing"], "time").optional(),
});

/** Dead Sea shore to the highest dwellings, m; hottest air of the day, K. */
const site = entry("A site", {
  altitude: quantity("length", { least: -450, most: 6000 }).optional(),
  "air temperature": quantity("temperature", { least: 220, most: 340 }).optional(),
  noise: word("city", "residential", "rural", "quiet rural").optional(),
});

const wanted = entry("Wanted", {
  elevation: quantity("angle", { least: 0, most: Math.PI / 2 }).optional(),
  direction: direction.optional(),
  "SWR below": swr.optional(),
  "may change": z.array(name, { error: () => "a list of keys or names" }).optional(),
});

const date = written<string>(
  z.string({ error: () => "a date, 2026-04-11" }).meta({ pattern: String.raw`^\d{4}-\d{2}-\d{2}$` }),
  (text): Parsed<string> => {
    const [, year, month, day] = (/^(\d{4})-(\d{2})-(\d{2})$/.exec(text.trim()) ?? []).map(Number);
    const days = [31, isLeap(year ?? 0) ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][(month ?? 0) - 1] ?? 0;
    if (day !== undefined && day >= 1 && day <= days) return parsed(text.trim());
    return faulty(`"${shown(text)}" is no date. Expected: year-month-day, 2026-04-11.`, "year-month-day, 2026-04-11");
  },
);

const isLeap = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);

const reading = entry("A reading", {
  at: name,
  frequency: frequency.optional(),
  SWR: swr.optional(),
  file: fileName.optional(),
  taken: date.optional(),
  "far end": word("antenna", "open", "shorted").optional(),
  note: note.optional(),
});

export const stationFile = entry("A station", {
  feedpath: z
    .string({ error: () => "the version of the grammar, 1" })
    .meta({ type: ["integer", "string"], enum: [1, "1"] })
    .optional(),
  station: title.optional(),
  note: note.optional(),
  frequency: frequency.optional(),
  band: span("frequency", radio).optional(),
  bands: z.record(z.string(), band).optional(),
  transmitter,
  lines: z.record(z.string(), ownLine).optional(),
  path: pathSchema,
  antenna: antennaSchema.optional(),
  antennas: z.record(z.string(), antennaSchema).optional(),
  ground: ground.optional(),
  site: site.optional(),
  earths: z.record(z.string(), earth).optional(),
  surroundings: z.array(surrounding, { error: () => "a list of things near by" }).optional(),
  people: z.array(person, { error: () => "a list of people" }).optional(),
  wanted: wanted.optional(),
  readings: z.array(reading, { error: () => "a list of readings" }).optional(),
});

export type FileStation = z.output<typeof stationFile>;
export type FileBand = z.output<typeof band>;
