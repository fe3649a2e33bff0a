/** Schemas of what an answer is made of: values, joints, parts, tables, lobes and the drawing. */
import type { Drawing, Grid, Joint, Lobe, PartResult, Table, Value } from "@feedpath/engine";
import * as z from "zod";

const number = z.number();
const text = z.string();
const numbers = z.array(z.number());
const nullableNumber = z.number().nullable();

const complexSchema = z
  .strictObject({ re: number, im: number, unit: text })
  .meta({ id: "complexValue", description: "A complex result in the unit named." });

const scalarSchema = z
  .strictObject({
    value: nullableNumber,
    unit: text,
    low: number.optional(),
    high: number.optional(),
    basis: text.optional(),
    reference: number.optional(),
    reason: text.optional(),
    says: text.optional(),
  })
  .meta({
    id: "scalarValue",
    description: "A result in the unit named; null where it is infinite or does not apply, and `reason` says why.",
  });

export const valueSchema = z.union([scalarSchema, complexSchema]) satisfies z.ZodType<Value>;

const effective = z.strictObject({ rms: number, peak: number });

export const jointSchema = z
  .strictObject({
    name: text,
    side: z.enum(["coaxial", "balanced"]),
    impedance: complexSchema,
    swr: z.strictObject({ value: nullableNumber, reference: number }),
    power: number,
    voltage: effective,
    current: effective,
  })
  .meta({
    id: "joint",
    description: "The place between two parts: ohm, watts (net, peak envelope), volts, amperes.",
  }) satisfies z.ZodType<Joint>;

export const partSchema = z
  .strictObject({
    name: text,
    kind: text,
    says: text,
    from: text,
    to: text,
    branch: text,
    loss: number,
    heat: number,
    margin: nullableNumber,
    length: number,
    along: z.strictObject({ power: numbers, voltage: numbers, current: numbers }),
  })
  .meta({
    id: "part",
    description: "One part of the path: loss in dB at the real load, heat in watts, length in metres.",
  }) satisfies z.ZodType<PartResult>;

export const tableSchema = z
  .strictObject({
    name: text,
    axis: text,
    labels: z.array(text).optional(),
    columns: z.record(
      text,
      z.strictObject({
        unit: text,
        values: z.array(nullableNumber),
        low: numbers.optional(),
        high: numbers.optional(),
      }),
    ),
  })
  .meta({
    id: "table",
    description: "Something swept: `axis` names the column of the independent variable; `labels` say what each row is.",
  }) satisfies z.ZodType<Table>;

const gridAxis = z.strictObject({ name: text, unit: text, values: numbers });

export const gridSchema = z
  .strictObject({
    name: text,
    rows: gridAxis,
    columns: gridAxis,
    value: text,
    unit: text,
    values: z.array(z.array(nullableNumber)),
  })
  .meta({
    id: "grid",
    description: "Something swept in two axes: `values` has one row for each value of `rows`.",
  }) satisfies z.ZodType<Grid>;

export const lobeSchema = z
  .strictObject({ elevation: number, azimuth: number, gain: number, width: nullableNumber })
  .meta({ id: "lobe", description: "A maximum of the pattern: degrees, dBi, degrees." }) satisfies z.ZodType<Lobe>;

export const drawingSchema = z
  .strictObject({
    wires: z.array(z.strictObject({ name: text, from: numbers, to: numbers })),
    surroundings: z.array(z.strictObject({ name: text, points: z.array(numbers) })),
    people: z.array(z.strictObject({ name: text, at: numbers })),
    antennaName: text,
    antennaSays: text,
    feedPoint: numbers,
    lineRoute: z.array(numbers),
    soil: z.strictObject({
      kind: text,
      says: text,
      penetrationDepth: nullableNumber,
      layerDepths: numbers.optional(),
    }),
    cutAzimuth: number,
  })
  .meta({
    id: "drawing",
    description: "The station to scale: metres, degrees; x east, y north, z up.",
  }) satisfies z.ZodType<Drawing>;
