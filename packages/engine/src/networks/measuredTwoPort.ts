/** Measured two-ports (Touchstone data) at any frequency inside their range. */
import {
  add,
  argument,
  type Complex,
  complex,
  divide,
  magnitude,
  multiply,
  one,
  scale,
  subtract,
} from "../numerics/complex";
import type { MeasuredNetwork } from "../station/station";
import type { TwoPort } from "./twoPort";

export type MeasuredResult =
  | { readonly kind: "two-port"; readonly twoPort: TwoPort; readonly notes: readonly string[] }
  | { readonly kind: "not computed"; readonly reason: string };

type Scattering = readonly [Complex, Complex, Complex, Complex];

/**
 * Two-port at `frequency` (Hz): scattering parameters interpolated straight between neighbouring points, which keeps a passive
 * network passive and a reciprocal one reciprocal. Refuses frequencies outside the points and networks that pass nothing.
 */
export function measuredTwoPort(network: MeasuredNetwork, frequency: number): MeasuredResult {
  const refuse = (reason: string): MeasuredResult => ({ kind: "not computed", reason });
  if (network.ports !== 2) return refuse(`the file describes ${network.ports} port(s); a two-port needs 2`);
  const { frequencies } = network;
  const [first, last] = [frequencies[0] ?? Number.NaN, frequencies.at(-1) ?? Number.NaN];
  if (!(frequency >= first && frequency <= last)) {
    return refuse(`measured from ${first / 1e6} MHz to ${last / 1e6} MHz, asked at ${frequency / 1e6} MHz`);
  }
  const { low, high, share } = neighbours(network, frequency);
  const s: Scattering = [
    between(low[0], high[0], share),
    between(low[1], high[1], share),
    between(low[2], high[2], share),
    between(low[3], high[3], share),
  ];
  if (magnitude(s[2]) === 0) return refuse(`the measured network passes nothing at ${frequency / 1e6} MHz`);
  return { kind: "two-port", twoPort: chainMatrix(s, network.reference), notes: coarseness(low[2], high[2]) };
}

/** The measured points on either side, and how far between them (0 to 1) the frequency lies. */
function neighbours(network: MeasuredNetwork, frequency: number) {
  const { frequencies } = network;
  const above = frequencies.findIndex((f) => f >= frequency);
  const below = Math.max(0, above - 1);
  const [from, to] = [frequencies[below] ?? frequency, frequencies[above] ?? frequency];
  const share = to > from ? (frequency - from) / (to - from) : 0;
  return { low: pointAt(network, below), high: pointAt(network, above), share };
}

function pointAt(network: MeasuredNetwork, index: number): Scattering {
  const row = network.scattering[index] ?? [];
  const entry = (k: number): Complex => complex(row[2 * k] ?? Number.NaN, row[2 * k + 1] ?? Number.NaN);
  return [entry(0), entry(1), entry(2), entry(3)];
}

const between = (a: Complex, b: Complex, share: number): Complex => add(scale(a, 1 - share), scale(b, share));

/** A straight chord between two phases lies inside the arc: say so where it takes more than about 0.05 dB. */
function coarseness(low: Complex, high: Complex): readonly string[] {
  const turn = Math.abs(argument(divide(high, low)));
  const loss = -20 * Math.log10(Math.max(Math.cos(turn / 2), 1e-3));
  if (!(loss > 0.05)) return [];
  return [
    `The measured points lie far apart: between two of them up to ${loss.toFixed(1)} dB may be an artefact of interpolation.`,
  ];
}

/** Chain matrix from scattering parameters on one real reference (ohm). Source: Frickey, IEEE Trans. MTT-42 (1994) 205. */
function chainMatrix([s11, s12, s21, s22]: Scattering, reference: number): TwoPort {
  const loop = multiply(s12, s21);
  const half = (x: Complex): Complex => divide(scale(x, 0.5), s21);
  const [plus1, minus1, plus2, minus2] = [add(one, s11), subtract(one, s11), add(one, s22), subtract(one, s22)];
  return {
    a: half(add(multiply(plus1, minus2), loop)),
    b: scale(half(subtract(multiply(plus1, plus2), loop)), reference),
    c: scale(half(subtract(multiply(minus1, minus2), loop)), 1 / reference),
    d: half(add(multiply(minus1, plus2), loop)),
  };
}
