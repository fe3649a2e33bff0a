/** A conductor inside a line: as any conductor, or of strands: "19 x 0.18 mm tinned copper". */
import type { Conductor } from "@feedpath/engine";
import { plainSymbols } from "./amount";
import { parseConductor } from "./conductor";
import { faulty, type Parsed, parsed } from "./fault";

/** Most strands of one conductor that are read. */
export const mostStrands = 10_000;

export interface LineConductor {
  /** The conductor; of a stranded one a single strand, with the insulation over all of them. */
  readonly conductor: Conductor;
  /** Null for one that is not stranded. */
  readonly strands: number | null;
}

/** Reads a conductor of a line from one text. */
export function parseLineConductor(written: string): Parsed<LineConductor> {
  const text = plainSymbols(written).replace(/\s+/g, " ");
  const match = /^(\d{1,6}) ?[x\u00d7*] ?(.+)$/.exec(text);
  if (!match) {
    const whole = parseConductor(written);
    return whole.ok ? parsed({ conductor: whole.value, strands: null }) : whole;
  }
  const [, count = "", strand = ""] = match;
  const read = parseConductor(strand);
  if (!read.ok) {
    const { fault } = read;
    return { ok: false, fault: { ...fault, mend: fault.mend === null ? null : `${count} x ${fault.mend}` } };
  }
  return strandsOf(read.value, Number(count));
}

/** So many of a strand twisted together. */
export function strandsOf(conductor: Conductor, strands: number): Parsed<LineConductor> {
  if (conductor.form === "tube")
    return faulty("Strands are solid wires: a strand cannot be a tube.", "19 x 0.18 mm copper");
  if (strands >= 2 && strands <= mostStrands) return parsed({ conductor, strands });
  const how = `from 2 to ${mostStrands}`;
  return faulty(`A stranded conductor has ${how} strands, not ${strands}.`, `a count of strands ${how}`);
}
