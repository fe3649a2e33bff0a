/** The path: parts in order, then at most one end. Ends that branch hold paths again. */

import type { Quantity } from "@feedpath/engine";
import * as z from "zod";
import type { Span } from "../units/parseQuantity";
import { kindEntry } from "./choice";
import { entry } from "./entry";
import { type FilePart, loss, partEntries } from "./parts";
import { name, note, quantity, span, wordOrQuantity } from "./values";

export type FileStep = FilePart | FileEnd;

export type FileEnd =
  | { readonly feed: string }
  | { readonly load: Quantity }
  | {
      readonly switch: string;
      readonly positions: Readonly<Record<string, readonly FileStep[]>>;
      readonly idle?: "open" | "shorted" | Quantity | undefined;
      readonly now?: string | undefined;
      readonly loss?: Quantity | undefined;
      readonly isolation?: Quantity | undefined;
      readonly note?: string | undefined;
    }
  | {
      readonly tee: string;
      readonly branches: Readonly<Record<string, readonly FileStep[]>>;
      readonly note?: string | undefined;
    }
  | {
      readonly "band splitter": string;
      readonly branches: Readonly<Record<string, readonly FileStep[]>>;
      readonly passes: Readonly<Record<string, Span>>;
      readonly loss?: Quantity | undefined;
      readonly note?: string | undefined;
    };

/** Paths by name of their position or branch. */
const paths = z
  .record(
    z.string(),
    z.lazy(() => pathSchema),
  )
  .meta({ description: "Paths by name" });

const feedEnd = entry("The end of a path", { feed: name });
const loadEnd = entry("A load", { load: quantity("impedance", { above: 0 }) });

const switchEnd = entry("A switch", {
  switch: name,
  positions: paths,
  idle: wordOrQuantity(["open", "shorted"], "impedance", { above: 0 }).optional(),
  now: name.optional(),
  loss: loss.optional(),
  isolation: quantity("decibels", { most: 200 }).optional(),
  note: note.optional(),
});

const teeEnd = entry("A tee", { tee: name, branches: paths, note: note.optional() });

const splitterEnd = entry("A band splitter", {
  "band splitter": name,
  passes: z.record(z.string(), span("frequency")),
  branches: paths,
  loss: loss.optional(),
  note: note.optional(),
});

const step = kindEntry("A part", [...partEntries, feedEnd, loadEnd, switchEnd, teeEnd, splitterEnd] as const);

export const pathSchema: z.ZodType<readonly FileStep[]> = z
  .array(step, { error: () => "a list of parts in order; for a transmitter at the feed point, []" })
  .meta({
    id: "path",
    description: "Parts in order from the transmitter; an end (feed, load, switch, tee, band splitter) comes last",
  });
