/** Far field of a driven antenna over its ground: direct and reflected plane wave, exact to leading order in 1/r. */
import type { Reflection } from "../ground/reflection";
import { soilSurface } from "../ground/soilSurface";
import { type Complex, complex } from "../numerics/complex";
import { speedOfLight, vacuumPermeability } from "../numerics/vacuum";
import type { DrivenAntenna } from "../wires/driveAntenna";
import { emptySum, sumMoments } from "./radiationSums";

export interface FarField {
  /** Component towards growing zenith angle, V rms (times distance, phase e^{-jkr} left out). */
  readonly eTheta: Complex;
  /** Horizontal component, positive counter-clockwise seen from above, V rms. */
  readonly ePhi: Complex;
}

type Coefficients = Pick<Reflection, "tm" | "te">;

const minusOne = complex(-1);
const perfect: Coefficients = { tm: minusOne, te: minusOne };

/** Reflection coefficients of the ground for a wave at an elevation; null in free space. */
export function groundReflection(driven: DrivenAntenna, elevation: number): Coefficients | null {
  const { soil, frequency } = driven.solution;
  if (soil.kind === "free space") return null;
  if (soil.kind === "perfect") return perfect;
  const surface = soilSurface(soil, frequency);
  return surface.reflect(complex(surface.k * Math.sin(elevation)));
}

const direct = emptySum();
const mirror = emptySum();

/**
 * Field times distance in the direction `elevation` above the horizon (radians; negative only in free space) and
 * `azimuth` (radians clockwise from north). `coefficients` may be handed in when one elevation is used often.
 */
export function farField(
  driven: DrivenAntenna,
  elevation: number,
  azimuth: number,
  coefficients: Coefficients | null = groundReflection(driven, elevation),
): FarField {
  const w = 2 * Math.PI * driven.solution.frequency;
  const k = w / speedOfLight;
  const cosine = Math.sin(elevation);
  const sine = Math.cos(elevation);
  const phi = Math.PI / 2 - azimuth;
  sumMoments(driven, k * sine, phi, k * cosine, direct);
  let [tr, ti] = [cosine * direct.u[0]! - sine * direct.n[0]!, cosine * direct.u[1]! - sine * direct.n[1]!];
  let [pr, pi] = [direct.v[0]!, direct.v[1]!];
  if (coefficients) {
    const { tm, te } = coefficients;
    sumMoments(driven, k * sine, phi, -k * cosine, mirror);
    const mr = cosine * mirror.u[0]! + sine * mirror.n[0]!;
    const mi = cosine * mirror.u[1]! + sine * mirror.n[1]!;
    tr += tm.re * mr - tm.im * mi;
    ti += tm.re * mi + tm.im * mr;
    pr += te.re * mirror.v[0]! - te.im * mirror.v[1]!;
    pi += te.re * mirror.v[1]! + te.im * mirror.v[0]!;
  }
  const factor = (w * vacuumPermeability) / (4 * Math.PI);
  return { eTheta: complex(factor * ti, -factor * tr), ePhi: complex(factor * pi, -factor * pr) };
}
