/** The chain matrix of a path at very many frequencies, on plain numbers. `partTwoPort` and `cascade` define what is correct. */
import { lineConstantsOver } from "../lines/constantsOver";
import type { LinePart, Part } from "../station/path";
import { greatestLineLoss } from "./lineTwoPort";
import { type PartSurroundings, partTwoPort } from "./partTwoPort";
import type { TwoPort } from "./twoPort";

/** Numbers of one chain matrix: a, b, c, d, each re and im. */
export const chainSize = 8;

/** Parts whose two-port is the same at every frequency. */
const steady = new Set<Part["kind"]>(["connector", "meter", "bond", "choke", "tuner", "balun"]);

/**
 * Chain matrices of `parts` (the transmitter's end first) at each of `frequencies` (Hz): 8 numbers each, see `chainSize`. Lines are
 * within 1e-10 of `partTwoPort` in their constants. Throws RangeError for a part that cannot be computed, naming it and why.
 */
export function chainOver(parts: readonly Part[], frequencies: Float64Array, around: PartSurroundings): Float64Array {
  const chain = new Float64Array(chainSize * frequencies.length);
  for (let at = 0; at < chain.length; at += chainSize) chain[at] = chain[at + 6] = 1;
  for (const part of parts) {
    if (part.kind === "line" && part.state === "in line") timesLine(chain, part, frequencies);
    else timesPart(chain, part, frequencies, around);
  }
  return chain;
}

function timesPart(chain: Float64Array, part: Part, frequencies: Float64Array, around: PartSurroundings): void {
  const at = (frequency: number): TwoPort => {
    const result = partTwoPort(part, frequency, around);
    if (result.kind === "two-port") return result.twoPort;
    throw new RangeError(`${part.kind} "${part.name}" at ${frequency} Hz: ${result.reason}`);
  };
  const same = steady.has(part.kind) || part.state === "bypassed" ? at(frequencies[0] ?? 1e6) : null;
  for (let i = 0; i < frequencies.length; i++) {
    const { a, b, c, d } = same ?? at(frequencies[i]!);
    times(chain, chainSize * i, a.re, a.im, b.re, b.im, c.re, c.im, d.re, d.im);
  }
}

function timesLine(chain: Float64Array, part: LinePart, frequencies: Float64Array): void {
  const length = part.length.value;
  const { z0, gamma } = lineConstantsOver(part.line.model, frequencies, {
    excessDecibelsPerMetre: part.excessLoss.value,
    temperature: part.temperature?.value ?? null,
  });
  for (let i = 0; i < frequencies.length; i++) {
    const [nepers, radians] = [gamma[2 * i]! * length, gamma[2 * i + 1]! * length];
    if (!(nepers * (20 / Math.LN10) <= greatestLineLoss)) {
      throw new RangeError(`line "${part.name}" takes more than ${greatestLineLoss} dB at ${frequencies[i]} Hz`);
    }
    const [even, odd] = [Math.cosh(nepers), Math.sinh(nepers)];
    const [cos, sin] = [Math.cos(radians), Math.sin(radians)];
    const [cr, ci] = [even * cos, odd * sin];
    const [sr, si] = [odd * cos, even * sin];
    const [zr, zi] = [z0[2 * i]!, z0[2 * i + 1]!];
    const size = zr * zr + zi * zi;
    times(
      chain,
      chainSize * i,
      cr,
      ci,
      zr * sr - zi * si,
      zr * si + zi * sr,
      (sr * zr + si * zi) / size,
      (si * zr - sr * zi) / size,
      cr,
      ci,
    );
  }
}

/** The matrix at `at` times that of one more part, towards the antenna. */
function times(
  m: Float64Array,
  at: number,
  ar: number,
  ai: number,
  br: number,
  bi: number,
  cr: number,
  ci: number,
  dr: number,
  di: number,
): void {
  for (let row = at; row < at + chainSize; row += 4) {
    const [lr, li, rr, ri] = [m[row]!, m[row + 1]!, m[row + 2]!, m[row + 3]!];
    m[row] = lr * ar - li * ai + rr * cr - ri * ci;
    m[row + 1] = lr * ai + li * ar + rr * ci + ri * cr;
    m[row + 2] = lr * br - li * bi + rr * dr - ri * di;
    m[row + 3] = lr * bi + li * br + rr * di + ri * dr;
  }
}
