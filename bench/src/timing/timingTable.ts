/** One table of timings, each beside the baseline of the same run. */
import { type Table, threeDigits } from "../report/section";
import { ratioTo, type Timing } from "./interleaved";

/** `what`: heading of the names. */
export const timingTable = (
  caption: string,
  what: string,
  timings: readonly Timing[],
  base: Timing,
  note = "",
): Table => ({
  caption,
  columns: [what, "median ms", "fastest ms", `over ${base.name}`],
  rows: timings.map((timing) => [
    timing.name,
    threeDigits(timing.median),
    threeDigits(timing.fastest),
    threeDigits(ratioTo(timing, base)),
  ]),
  note,
});
