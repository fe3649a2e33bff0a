/** How to spoil a thing's resonance: a conductor opened or choked where its current is largest, an antenna ended otherwise. */
import type { PointRefused } from "../../chain/workedPoint";
import type { Station } from "../../station/station";
import { wireLength } from "../../wires/geometry";
import type { Worked } from "../common/worked";
import { type Bench, type Case, isWorked, wholeCase } from "./cases";
import type { Induced } from "./induced";
import type { Thing } from "./things";
import { withEnd, withGap } from "./variants";

export type RemedyKind = "insulator" | "choke" | "open" | "shorted";

export interface Remedy {
  readonly kind: RemedyKind;
  /** m along the conductor; null at the feed point of an antenna. */
  readonly at: number | null;
  /** ohm, of a choke. */
  readonly ohms: number | null;
  readonly state: Case;
}

/** The chokes are closed ports of one solution, so a second remedy costs no second one. */
export function remediesFor(
  worked: Worked,
  bench: Bench,
  asked: { thing: Thing; induced: Induced; ohms: number },
): Remedy[] {
  const { station } = worked;
  const { thing, ohms } = asked;
  if (thing.kind === "sheet") return [];
  const made = (kind: RemedyKind, changed: Station, more: Partial<Remedy> = {}): Remedy[] => {
    const state: Case | PointRefused = wholeCase(changed, bench);
    return isWorked(state) ? [{ kind, at: null, ohms: null, ...more, state }] : [];
  };
  if (thing.kind === "antenna")
    return (["open", "shorted"] as const).flatMap((end) => made(end, withEnd(station, thing, end)));
  const at = openedAt(worked, asked);
  return [
    ...made("insulator", withGap(station, thing, at, "open"), { at }),
    ...made("choke", withGap(station, thing, at, { re: ohms, im: 0 }), { at, ohms }),
  ];
}

/** A gap keeps this share of its straight piece away from the piece's ends. */
const inner = 0.1;

/** m along: where the current is largest, a little inside of the straight piece it lies on. */
export function openedAt(worked: Worked, { thing, induced }: { thing: Thing; induced: Induced }): number {
  const { wires } = worked.point.antenna.build.structure;
  const lengths = thing.wires.map((w) => wireLength(wires[w]!));
  let start = 0;
  for (const [i, length] of lengths.entries()) {
    if (induced.at <= start + length || i === lengths.length - 1) {
      const within = Math.min(Math.max(induced.at - start, inner * length), (1 - inner) * length);
      return start + within;
    }
    start += length;
  }
  return start / 2;
}
