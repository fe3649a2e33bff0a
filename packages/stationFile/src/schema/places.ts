/** Places and directions. */
import type { Place, Quantity } from "@feedpath/engine";
import * as z from "zod";
import { faultyOffset, parseDirection, parsePlace } from "../units/place";
import { text } from "./values";
import { written } from "./written";

/** A place, `[9 m east, 2 m north, 4 m up]`. */
export const place = z
  .array(text("an offset, 9 m east"), { error: () => "a place in brackets, [9 m east, 4 m up]" })
  .max(3, { error: () => "A place has at most three offsets: east or west, north or south, up or under." })
  .meta({ id: "place", description: "[9 m east, 2 m north, 4 m up], or three plain lengths x, y, z; left out is 0 m" })
  .transform((offsets, context): Place => {
    const read = parsePlace(offsets);
    if (read.ok) return read.value;
    const wrong = faultyOffset(offsets);
    const path = wrong < 0 ? [] : [wrong];
    const { fault } = read;
    context.addIssue({ code: "custom", path, message: fault.message, params: { fault, at: "value" } });
    return z.NEVER;
  });

export const places = (least: number) =>
  z
    .array(place, { error: () => "a list of places" })
    .min(least, { error: () => `At least ${least} places are needed here.` });

export const direction = written<Quantity>(
  text("a compass word or an angle, 250 deg").meta({ id: "direction", description: "Clockwise from true north" }),
  parseDirection,
);
