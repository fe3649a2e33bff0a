/** Far field of a driven antenna over its ground: direct and reflected plane wave, exact to leading order in 1/r. */
import type { Reflection } from "../ground/reflection";
import { soilSurface } from "../ground/soilSurface";
import { type Complex, complex } from "../numerics/complex";
import { speedOfLight, vacuumPermeability } from "../numerics/vacuum";
import type { Radiating } from "../wires/radiating";
import { type Directions, oneDirection } from "./directions";
import { numbersOfWave, radiationVectors, wavesOf } from "./radiationSums";

export interface FarField {
  /** Component towards growing zenith angle, V rms (times distance, phase e^{-jkr} left out). */
  readonly eTheta: Complex;
  /** Horizontal component, positive counter-clockwise seen from above, V rms. */
  readonly ePhi: Complex;
}

type Coefficients = Pick<Reflection, "tm" | "te">;

const minusOne = complex(-1);
const perfect: Coefficients = { tm: minusOne, te: minusOne };
const none: Coefficients = { tm: complex(0), te: complex(0) };

/** What the ground reflects at an elevation; the last one is kept, for directions come ring by ring. */
function groundReflection({ solution }: Radiating): (elevation: number) => Coefficients {
  const { soil, frequency } = solution;
  if (soil.kind === "free space") return () => none;
  if (soil.kind === "perfect") return () => perfect;
  const surface = soilSurface(soil, frequency);
  let last = Number.NaN;
  let kept = none;
  return (elevation) => {
    if (elevation !== last) kept = surface.reflect(complex(surface.k * Math.sin(elevation)));
    last = elevation;
    return kept;
  };
}

/** Numbers a direction in what farFields gives: re and im of eTheta, then of ePhi. */
export const numbersOfField = 4;

/** Field times distance in many directions (see farField), `numbersOfField` each. Elevations below 0 in free space only. */
export function farFields(driven: Radiating, { elevation, azimuth }: Directions): Float64Array {
  const w = 2 * Math.PI * driven.solution.frequency;
  const k = w / speedOfLight;
  const factor = (w * vacuumPermeability) / (4 * Math.PI);
  const sums = radiationVectors(driven, directAndMirrored(k, elevation, azimuth));
  const reflected = groundReflection(driven);
  const out = new Float64Array(numbersOfField * elevation.length);
  for (let i = 0; i < elevation.length; i++) {
    const [cosine, sine] = [Math.sin(elevation[i]!), Math.cos(elevation[i]!)];
    const { tm, te } = reflected(elevation[i]!);
    const d = numbersOfWave * 2 * i;
    const m = d + numbersOfWave;
    const mirrorRe = cosine * sums[m]! + sine * sums[m + 4]!;
    const mirrorIm = cosine * sums[m + 1]! + sine * sums[m + 5]!;
    const thetaRe = cosine * sums[d]! - sine * sums[d + 4]! + tm.re * mirrorRe - tm.im * mirrorIm;
    const thetaIm = cosine * sums[d + 1]! - sine * sums[d + 5]! + tm.re * mirrorIm + tm.im * mirrorRe;
    const phiRe = sums[d + 2]! + te.re * sums[m + 2]! - te.im * sums[m + 3]!;
    const phiIm = sums[d + 3]! + te.re * sums[m + 3]! + te.im * sums[m + 2]!;
    const at = numbersOfField * i;
    out[at] = factor * thetaIm;
    out[at + 1] = -factor * thetaRe;
    out[at + 2] = factor * phiIm;
    out[at + 3] = -factor * phiRe;
  }
  return out;
}

/** For each direction the wave that leaves that way, and the one that does after the ground has mirrored it. */
function directAndMirrored(k: number, elevation: Float64Array, azimuth: Float64Array) {
  const waves = wavesOf(2 * elevation.length);
  for (let i = 0; i < elevation.length; i++) {
    const upright = k * Math.sin(elevation[i]!);
    for (const place of [2 * i, 2 * i + 1]) {
      waves.radial[place] = k * Math.cos(elevation[i]!);
      waves.phi[place] = Math.PI / 2 - azimuth[i]!;
      waves.upright[place] = place % 2 === 0 ? upright : -upright;
    }
  }
  return waves;
}

/**
 * Field times distance in the direction `elevation` above the horizon (radians; negative only in free space) and
 * `azimuth` (radians clockwise from north).
 */
export function farField(driven: Radiating, elevation: number, azimuth: number): FarField {
  const [a, b, c, d] = farFields(driven, oneDirection(elevation, azimuth));
  return { eTheta: complex(a, b), ePhi: complex(c, d) };
}
