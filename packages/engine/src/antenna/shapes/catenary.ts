/**
 * A wire of even weight hanging between two points: the catenary, z = a cosh(u/a), exactly. Source: elementary statics.
 * A curve is `scale` a and `start`, the level distance of its first point from its lowest one; all in metres.
 */
import { rootBetween } from "../../numerics/crossings";

export interface Catenary {
  readonly scale: number;
  readonly start: number;
  /** Level distance and difference in height of its ends. */
  readonly run: number;
  readonly rise: number;
}

/** Curve through both ends: the lowest point of the pair lies where sinh and cosh give the rise, artanh(rise/length). */
const through = (scale: number, run: number, rise: number, length: number): Catenary => ({
  scale,
  start: scale * Math.atanh(rise / length) - run / 2,
  run,
  rise,
});

/** A wire of `length` between ends `run` > 0 apart level and `rise` in height: sinh x / x = √(length² - rise²)/run, x = run/2a. */
export function catenaryOfLength(run: number, rise: number, length: number): Catenary {
  const ratio = Math.sqrt(length * length - rise * rise) / run;
  if (!(ratio > 1))
    throw new RangeError(`a wire of ${length} m does not hang between ends ${Math.hypot(run, rise)} m apart`);
  let high = 1;
  while (Math.sinh(high) / high < ratio) high *= 2;
  // sinh x / x - 1 without cancellation for the tautest wires.
  const missing = (x: number) => (x < 1e-3 ? (x * x) / 6 : Math.sinh(x) / x - 1) - (ratio - 1);
  const x = rootBetween(missing, 0, high, 1e-15 * high);
  return through(run / (2 * x), run, rise, length);
}

/** A wire of `length` whose ends differ by `rise` and which hangs `sag` below its chord at mid-span: sag = length/2 tanh(x/2). */
export function catenaryOfSag(length: number, rise: number, sag: number): Catenary {
  if (!(sag > 0 && sag < length / 2)) throw new RangeError(`a wire of ${length} m does not sag ${sag} m`);
  const x = 2 * Math.atanh((2 * sag) / length);
  const level = Math.sqrt(length * length - rise * rise);
  return through(level / (2 * Math.sinh(x)), (level * x) / Math.sinh(x), rise, length);
}

/** A wire of `weight` N/m drawn with a horizontal pull of `tension` N: a = tension/weight. */
export function catenaryOfTension(run: number, rise: number, tension: number, weight: number): Catenary {
  const scale = tension / weight;
  return through(scale, run, rise, Math.hypot(rise, 2 * scale * Math.sinh(run / (2 * scale))));
}

export const catenaryLength = ({ scale, start, run }: Catenary): number =>
  scale * (Math.sinh((start + run) / scale) - Math.sinh(start / scale));

/** Angle through which the wire turns from end to end, rad. */
export const catenaryTurn = ({ scale, start, run }: Catenary): number =>
  Math.atan(Math.sinh((start + run) / scale)) - Math.atan(Math.sinh(start / scale));

/** Points at equal lengths of wire, ends included: level distance and height from the first end. */
export function catenaryPoints(curve: Catenary, pieces: number): { readonly along: number; readonly up: number }[] {
  const { scale, start, run, rise } = curve;
  const first = Math.sinh(start / scale);
  const length = catenaryLength(curve);
  return Array.from({ length: pieces + 1 }, (_, i) => {
    if (i === 0) return { along: 0, up: 0 };
    if (i === pieces) return { along: run, up: rise };
    const u = scale * Math.asinh(first + (length * i) / (pieces * scale));
    return { along: u - start, up: scale * (Math.cosh(u / scale) - Math.cosh(start / scale)) };
  });
}
