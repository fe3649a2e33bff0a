/** Conductors inside lines: in one text, or with their keys. */
import * as z from "zod";
import { type LineConductor, mostStrands, parseLineConductor, strandsOf } from "../units/lineConductor";
import { textOr } from "./choice";
import { longConductor, readLongConductor } from "./conductors";
import { entry } from "./entry";
import { count, text } from "./values";
import { written } from "./written";

const longForm = entry("A conductor", { ...longConductor, strands: count(2, mostStrands).optional() }).transform(
  ({ strands, ...long }, context): LineConductor => {
    const whole = readLongConductor(long);
    const read = whole.ok && strands !== undefined ? strandsOf(whole.value, strands) : whole;
    if (read.ok) return "conductor" in read.value ? read.value : { conductor: read.value, strands: null };
    context.addIssue({ code: "custom", message: read.fault.message, params: { fault: read.fault, at: "value" } });
    return z.NEVER;
  },
);

export const lineConductor = textOr(
  written<LineConductor>(
    text("a conductor, 2.26 mm copper").meta({
      id: "lineConductor",
      description: "2.26 mm copper; 19 x 0.18 mm tinned copper; 12 mm tube copper; 1 mm copper in 0.5 mm PVC",
      examples: ["2.26 mm copper", "19 x 0.18 mm tinned copper", "12 mm tube copper"],
    }),
    parseLineConductor,
  ),
  longForm,
);
