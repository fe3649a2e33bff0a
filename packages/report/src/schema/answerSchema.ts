/** The answer as a schema: what `--json` prints, checked on reading and published as JSON Schema. */
import type { Answer, Problem, Refusal } from "@feedpath/engine";
import * as z from "zod";
import {
  drawingSchema,
  gridSchema,
  jointSchema,
  lobeSchema,
  partSchema,
  tableSchema,
  valueSchema,
} from "./resultSchemas";

const number = z.number();
const text = z.string();
const nullableNumber = z.number().nullable();
const schemaName = z.literal("feedpath-answer-1");
const phrases = z.array(z.strictObject({ text, value: text.optional() }));

const workingStep = z.strictObject({
  text,
  formula: text.optional(),
  substituted: text.optional(),
  result: z.strictObject({ value: number, unit: text }).optional(),
  source: text,
  explains: z.array(text),
});

const reading = z.strictObject({
  at: text,
  frequency: number,
  measured: number,
  predicted: number,
  predictedLow: number,
  predictedHigh: number,
  meterMayShow: z.strictObject({ low: number, high: nullableNumber, directivity: number }).nullable(),
  agrees: z.boolean(),
  says: text,
});

export const answerSchema = z
  .strictObject({
    schema: schemaName,
    question: text,
    asked: text,
    station: text,
    band: text,
    frequency: number,
    parameters: z.record(text, z.union([number, text, z.null()])),
    headline: text,
    headlinePhrases: phrases,
    verdict: z.enum(["good", "workable", "trouble"]).nullable(),
    verdictPhrases: phrases,
    reasons: z.array(z.strictObject({ says: text, value: number, limit: number, unit: text, source: text })),
    next: text,
    wouldSettle: text.nullable(),
    values: z.record(text, valueSchema),
    joints: z.array(jointSchema),
    parts: z.array(partSchema),
    tables: z.array(tableSchema),
    grids: z.array(gridSchema).optional(),
    lobes: z.array(lobeSchema),
    rulesOfThumb: z.array(z.strictObject({ rule: text, ruleValue: text, computed: text, holds: text, source: text })),
    mistakenIdea: z.strictObject({ idea: text, refutation: text }).nullable(),
    assumptions: z.array(z.strictObject({ name: text, value: text, reason: text, place: text })),
    uncertainties: z.array(z.strictObject({ input: text, place: text, says: text, atLow: number, atHigh: number })),
    readings: z.array(reading),
    cautions: z.array(text),
    notCovered: z.array(text),
    working: z.array(workingStep),
    figures: z.array(z.strictObject({ name: text, title: text, description: text })),
    drawing: drawingSchema.nullable(),
    provenance: z.strictObject({
      program: text,
      catalogue: text,
      kernels: text,
      file: text,
      methods: z.array(z.strictObject({ name: text, says: text })),
    }),
  })
  .meta({ id: "answer", description: "An answer (exit status 0)." }) satisfies z.ZodType<Answer>;

export const refusalSchema = z
  .strictObject({
    schema: schemaName,
    question: text,
    asked: text,
    station: text,
    refused: z.strictObject({ why: text, wouldMakeItAnswerable: text }),
  })
  .meta({
    id: "refusal",
    description: "The question cannot be answered for this station (exit status 3).",
  }) satisfies z.ZodType<Refusal>;

/** What is printed where the file or the command is wrong (exit status 2). */
export interface ProblemsDocument {
  readonly problems: readonly Problem[];
}

const place = z.int().min(1);

export const problemsSchema = z
  .strictObject({
    problems: z.array(
      z.strictObject({
        file: text,
        line: place,
        column: place,
        endColumn: place,
        place: text,
        found: text,
        expected: text,
        message: text,
        nearest: text.nullable(),
        mend: text.nullable(),
      }),
    ),
  })
  .meta({
    id: "problems",
    description: "The file or the command is wrong (exit status 2).",
  }) satisfies z.ZodType<ProblemsDocument>;
