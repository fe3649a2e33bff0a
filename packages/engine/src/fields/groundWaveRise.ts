/** How a ground wave grows with height and leans forwards, and what an antenna's currents make of it. */
import { add, type Complex, complex, multiply, reciprocal, scale, subtract, zero } from "../numerics/complex";
import type { DrivenAntenna } from "../wires/driveAntenna";
import { flatAttenuation, numericalDistance } from "./groundWaveFlat";
import type { Way } from "./groundWaveWay";

/** Field over height z: 1 + slope z + bend z^2/2; the tilt, by which it leans forwards, grows as bend z/(jk). */
export interface Rise {
  readonly slope: Complex;
  readonly bend: Complex;
}

/**
 * Slope jk times the impedance; bend from the parabolic wave equation, 2jk (F'/F - 1/(2 distance)), with
 * w dF/dw = (F - 1)/2 - w F. Of the flat earth: where the sphere counts, the bend no longer does.
 */
export function riseOf(impedance: Complex, { k, distance }: Way): Rise {
  const w = numericalDistance(k, distance, impedance);
  const inner = add(reciprocal(flatAttenuation(w)), scale(w, 2));
  return { slope: multiply(complex(0, k), impedance), bend: multiply(complex(0, -k / distance), inner) };
}

/** Field at height z (m) over that on the ground. */
export const riseAt = ({ slope, bend }: Rise, z: number): Complex =>
  complex(1 + slope.re * z + (bend.re * z * z) / 2, slope.im * z + (bend.im * z * z) / 2);

/** Sums of the currents as the wave meets them: with its tilt, and across. A m. */
export function metCurrents(driven: DrivenAntenna, azimuth: number, k: number, vertical: Rise, horizontal: Rise) {
  const { position, direction, count } = driven.solution.model.points;
  const [east, north] = [Math.sin(azimuth), Math.cos(azimuth)];
  let upright: Complex = zero;
  let across: Complex = zero;
  for (let p = 0; p < count; p++) {
    const [x, y, z] = [position[3 * p]!, position[3 * p + 1]!, position[3 * p + 2]!];
    const [tx, ty, tz] = [direction[3 * p]!, direction[3 * p + 1]!, direction[3 * p + 2]!];
    const phase = k * (east * x + north * y);
    const wave = complex(Math.cos(phase), Math.sin(phase));
    const moment = multiply(complex(driven.moments.re[p]!, driven.moments.im[p]!), wave);
    const tilt = multiply(complex(0, -1 / k), add(vertical.slope, scale(vertical.bend, z)));
    const along = tx * east + ty * north;
    const met = subtract(scale(riseAt(vertical, z), tz), scale(tilt, along));
    upright = add(upright, multiply(moment, met));
    across = add(across, multiply(moment, scale(riseAt(horizontal, z), ty * east - tx * north)));
  }
  return { upright, across };
}
