/** A measured one-port sweep: where its reflection is least, and its X = 0 after it is moved to the feed point. */

import { voltageReflection } from "../../lines/reflection";
import { type Complex, complex, magnitudeSquared } from "../../numerics/complex";
import type { MeasuredNetwork } from "../../station/station";
import { nearestTo } from "./curveSearch";
import type { FeedPath } from "./feedPath";
import type { Span } from "./fit";
import { vertex } from "./parabola";

export interface SweepDip {
  /** Frequency (Hz) of least reflection on the rated load, between the measured points by a parabola. */
  readonly dip: number;
  /** Impedances at the joint (ohm) over frequency (Hz), inside the span looked at. */
  readonly points: readonly { readonly frequency: number; readonly impedance: Complex }[];
}

function pointsOf({ frequencies, scattering, reference }: MeasuredNetwork, span: Span): SweepDip["points"] {
  return frequencies.flatMap((frequency, i) => {
    const [re = Number.NaN, im = Number.NaN] = scattering[i] ?? [];
    if (frequency < span.from || frequency > span.to) return [];
    const below = (1 - re) ** 2 + im ** 2;
    // Z = R (1 + s)/(1 - s); an open end has none.
    if (!(below > 1e-12)) return [];
    const impedance = complex((reference * (1 - re * re - im * im)) / below, (2 * reference * im) / below);
    return [{ frequency, impedance }];
  });
}

/** Null where the least reflection lies at an end of the points, or there are fewer than three. */
export function leastReflection(network: MeasuredNetwork, span: Span, rated: number): SweepDip | null {
  const points = pointsOf(network, span);
  const sizes = points.map((p) => ({
    f: p.frequency,
    y: magnitudeSquared(voltageReflection(p.impedance, complex(rated))),
  }));
  const least = sizes.reduce((best, p, i) => (p.y < sizes[best]!.y ? i : best), 0);
  const [a, b, c] = [sizes[least - 1], sizes[least], sizes[least + 1]];
  return a && b && c ? { dip: vertex(a, b, c), points } : null;
}

/** X = 0 nearest to `near` (Hz): at the joint itself without a path, at the feed point with one; null without any. */
export function zeroOfSweep({ points }: SweepDip, path: FeedPath | null, near: number): number | null {
  const moved = points.map(({ frequency, impedance }) => ({
    f: frequency,
    x: (path ? path.towardsAntenna(frequency, impedance) : impedance).im,
  }));
  const crossings = moved.slice(1).flatMap((b, i) => {
    const a = moved[i]!;
    return a.x < 0 === b.x < 0 ? [] : [a.f - (a.x * (b.f - a.f)) / (b.x - a.x)];
  });
  return nearestTo(near, crossings);
}
