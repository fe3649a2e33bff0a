/**
 * A small loop tuned by its capacitor and coupled by an ideal transformer: both are set at one frequency, where the loop
 * is resonant and matched, and stay as they are over the band.
 */
import { add, type Complex, complex, divide, multiply, subtract } from "../numerics/complex";
import { rootBetween } from "../numerics/crossings";
import { invertComplexMatrix } from "../numerics/invertComplexMatrix";
import type { Adjustable } from "../station/path";

/** A small loop in a structure: which feed and which gap are its own. */
export interface LoopInStructure {
  readonly name: string;
  /** Port numbers among all ports of the structure (feeds, gaps, contacts). */
  readonly feed: number;
  readonly gap: number;
  readonly capacitor: Adjustable;
  /** Ohm in series with the capacitor. */
  readonly jointsResistance: number;
  /** Ohm that the transformer gives at the tuned frequency. */
  readonly lineSide: number;
}

export interface LoopSetting {
  /** F */
  readonly capacitance: number;
  /** Ohm at the loop's feed when tuned. */
  readonly resistance: number;
  /** Volts on the line for one volt at the loop's feed: √(line side/resistance). */
  readonly ratio: number;
}

/** Ohm in the loop's gap at angular frequency w. */
export const capacitorImpedance = (loop: LoopInStructure, capacitance: number, w: number): Complex => {
  const x = 1 / (w * capacitance);
  return complex(loop.jointsResistance + x / loop.capacitor.q.value, -x);
};

/**
 * Setting of the loop at `frequency` (Hz). `admittance` (S) between ports of the structure there, its feed and gap among
 * them; others are open. Refused where the capacitor's range does not reach resonance.
 */
export function tuneLoop(
  loop: LoopInStructure,
  admittance: readonly (readonly Complex[])[],
  frequency: number,
): LoopSetting | { readonly refused: { readonly why: string; readonly mend: string } } {
  const z = invertComplexMatrix(admittance);
  if (!z) throw new RangeError(`the small loop "${loop.name}": its ports have no impedance`);
  const w = 2 * Math.PI * frequency;
  const { from, to } = loop.capacitor;
  const atFeed = (capacitance: number): Complex =>
    closedAt(z, loop.gap, capacitorImpedance(loop, capacitance, w))[loop.feed]![loop.feed]!;
  // The loop resonates where the capacitor takes the reactance of its gap with the feed closed on itself.
  const shorted = closedAt(z, loop.feed, complex(0))[loop.gap]![loop.gap]!;
  const needed = shorted.im > 0 ? 1 / (w * shorted.im) : Number.NaN;
  if (!(needed >= from && needed <= to)) return { refused: outOfRange(loop, frequency, needed) };
  const capacitance = resonance(atFeed, needed);
  const { re: resistance } = atFeed(capacitance);
  return { capacitance, resistance, ratio: Math.sqrt(loop.lineSide / resistance) };
}

/** Impedances between the ports when one of them is closed with `closing` ohm. */
function closedAt(z: readonly (readonly Complex[])[], port: number, closing: Complex): Complex[][] {
  const own = add(z[port]![port]!, closing);
  return z.map((row, i) => row.map((x, k) => subtract(x, divide(multiply(z[i]![port]!, z[port]![k]!), own))));
}

/** The capacitance near `guess` (F) that leaves no reactance at the feed. */
function resonance(atFeed: (capacitance: number) => Complex, guess: number): number {
  const reactance = (c: number) => atFeed(c).im;
  for (let width = 1e-4; width < 0.2; width *= 2) {
    const [low, high] = [guess * (1 - width), guess * (1 + width)];
    if (reactance(low) < 0 !== reactance(high) < 0) return rootBetween(reactance, low, high, 1e-12 * guess);
  }
  return guess;
}

function outOfRange(loop: LoopInStructure, frequency: number, needed: number) {
  const picofarads = (c: number): string => `${Number((c * 1e12).toPrecision(3))} pF`;
  const megahertz = Number((frequency / 1e6).toPrecision(5));
  const range = `${picofarads(loop.capacitor.from)} to ${picofarads(loop.capacitor.to)}`;
  const why =
    needed > 0
      ? `the small loop needs ${picofarads(needed)} at ${megahertz} MHz; its capacitor goes from ${range}`
      : `no capacitor tunes this loop to ${megahertz} MHz: it is too large there to be a small loop`;
  return { why, mend: "another `capacitor` range, `round` or frequency" };
}

/** Admittance (S) on the line side of ideal transformers, one ratio a feed (1: none). */
export const behindTransformers = (
  admittance: readonly (readonly Complex[])[],
  ratios: readonly number[],
): Complex[][] =>
  admittance.map((row, i) =>
    row.map((y, k) => complex(y.re / (ratios[i]! * ratios[k]!), y.im / (ratios[i]! * ratios[k]!))),
  );
