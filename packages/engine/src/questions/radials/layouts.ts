/** Which radials are tried: numbers, lengths, and the same wire cut otherwise. */
import type { RadialChange } from "./withRadials";

/** Doubled from one to the next, so that what doubling brings shows. */
const counts = [1, 2, 4, 8, 16, 32, 64];
/** Into so many pieces the same wire is cut. */
const cuts = [1, 2, 3, 4, 6, 8, 12, 16, 24, 32, 48, 64];
/** Share of the wavelength: of each radial at the station's own number. */
const lengths = [0.03, 0.06, 0.1, 0.15, 0.2, 0.25, 0.3];
/** Shortest and longest piece the same wire is cut into, share of the wavelength. */
const shortest = 0.015;
const longest = 0.5;
/** Most raised radials tried: each wants a support at its end. */
const mostRaised = 16;
/** Two lengths nearer than this are one, relative. */
const same = 0.04;

export interface Plan {
  readonly present: RadialChange | null;
  readonly byCount: readonly RadialChange[];
  readonly byLength: readonly RadialChange[];
  readonly sameWire: readonly RadialChange[];
  /** The same wire at the other place: raised, or on the soil. */
  readonly otherwise: readonly RadialChange[];
  /** The present ones spread all round; null where they are, or where there are none. */
  readonly allRound: RadialChange | null;
}

export interface PlanInput {
  /** Null where the station has none. */
  readonly present: RadialChange | null;
  /** m */
  readonly wave: number;
  readonly count: number;
  readonly length: number;
  /** Of all radials together, m. */
  readonly wire: number;
  readonly lie: RadialChange["lie"];
  readonly otherLie: RadialChange["lie"];
  readonly sector: boolean;
}

export function planOf(asked: PlanInput): Plan {
  const { present, wave, count, length, wire, lie, otherLie, sector } = asked;
  const numbers = (at: RadialChange["lie"], among: readonly number[]): number[] => {
    const most = at === "on the soil" ? Number.POSITIVE_INFINITY : Math.max(mostRaised, count);
    return [...new Set([...among, count])].filter((n) => n <= most).sort((a, b) => a - b);
  };
  const pieces = (at: RadialChange["lie"]): RadialChange[] =>
    numbers(at, cuts)
      .map((n) => ({ count: n, length: wire / n, lie: at }))
      .filter((c) => c.count === count || (c.length >= shortest * wave && c.length <= longest * wave));
  const tried = lengths.map((share) => share * wave).filter((l) => Math.abs(l / length - 1) > same);
  return {
    present,
    byCount: numbers(lie, counts).map((n) => ({ count: n, length, lie })),
    byLength: [...tried, length].sort((a, b) => a - b).map((l) => ({ count, length: l, lie })),
    sameWire: pieces(lie),
    otherwise: pieces(otherLie),
    allRound: present && sector ? { ...present, allRound: true } : null,
  };
}
