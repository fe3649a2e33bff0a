/**
 * Soil in level layers as plane waves meet it, propagating and evanescent: the impedance at its surface, cascaded from
 * below. e^{+jwt}, roots with Im <= 0. The cascade is that of transmission lines, one a polarisation (textbook).
 */
import { add, type Complex, complex, divide, subtract } from "../numerics/complex";
import { divideInto, lowerRootInto } from "../numerics/complexInto";
import { speedOfLight } from "../numerics/vacuum";
import { complexPermittivity, contrast, type SoilNumbers } from "./soilMedium";

/** One layer; `thickness` in m, null for the lowest, which goes down without end. */
export interface SoilLayer extends SoilNumbers {
  readonly thickness: number | null;
}

/** Layers from the top at one frequency. */
export interface LayeredMedium {
  /** Wavenumber of the air, rad/m. */
  readonly k: number;
  readonly layers: readonly { readonly permittivity: Complex; readonly thickness: number }[];
}

/** Layers at a frequency in Hz. Throws RangeError where a layer above the lowest has no thickness. */
export function layeredMedium(layers: readonly SoilLayer[], frequency: number): LayeredMedium {
  const last = layers.length - 1;
  layers.forEach(({ thickness }, i) => {
    if (i < last && !(thickness !== null && thickness > 0 && Number.isFinite(thickness)))
      throw new RangeError(`layer ${i + 1} of the soil has thickness ${thickness}: expected metres above 0`);
  });
  return {
    k: (2 * Math.PI * frequency) / speedOfLight,
    layers: layers.map((layer, i) => ({
      permittivity: complexPermittivity(layer, frequency),
      thickness: i === last ? Number.POSITIVE_INFINITY : layer.thickness!,
    })),
  };
}

/** Wavenumber below which all layers have theirs, and the waves along their surfaces; rad/m. */
export const largestWavenumber = ({ k, layers }: LayeredMedium): number =>
  k * Math.sqrt(Math.max(...layers.map((layer) => contrast(layer.permittivity))));

/** What a wave meets at the surface, in terms of vertical wavenumbers (rad/m). */
export interface SurfaceImmittance {
  /** TM impedance times w eps0; kz over the permittivity for a half-space. */
  readonly tm: Complex;
  /** TE admittance times w mu0; kz for a half-space. */
  readonly te: Complex;
}

const scratch = new Float64Array(6);

/** Replaces the immittance at `at` by what is seen of it through a layer of immittance `own`; `q`: the wave down and up. */
function seeThrough(out: Float64Array, at: number, re: number, im: number, qRe: number, qIm: number): void {
  const belowRe = out[at]!;
  const belowIm = out[at + 1]!;
  divideInto(scratch, 0, belowRe - re, belowIm - im, belowRe + re, belowIm + im);
  const backRe = scratch[0]! * qRe - scratch[1]! * qIm;
  const backIm = scratch[0]! * qIm + scratch[1]! * qRe;
  divideInto(scratch, 0, 1 + backRe, backIm, 1 - backRe, -backIm);
  out[at] = re * scratch[0]! - im * scratch[1]!;
  out[at + 1] = re * scratch[1]! + im * scratch[0]!;
}

/** Writes re, im of the TM and of the TE surface immittance for vertical wavenumber `re` + j `im` (rad/m, Im <= 0) in air. */
export function writeImmittance(re: number, im: number, { k, layers }: LayeredMedium, out: Float64Array): void {
  if (layers.length === 0) throw new RangeError("layered soil has no layer: expected at least one");
  const squareRe = re * re - im * im - k * k;
  const squareIm = 2 * re * im;
  for (let i = layers.length - 1; i >= 0; i--) {
    const { permittivity, thickness } = layers[i]!;
    lowerRootInto(scratch, 2, squareRe + k * k * permittivity.re, squareIm + k * k * permittivity.im);
    const insideRe = scratch[2]!;
    const insideIm = scratch[3]!;
    divideInto(scratch, 4, insideRe, insideIm, permittivity.re, permittivity.im);
    const tmRe = scratch[4]!;
    const tmIm = scratch[5]!;
    if (i === layers.length - 1) {
      out[0] = tmRe;
      out[1] = tmIm;
      out[2] = insideRe;
      out[3] = insideIm;
      continue;
    }
    const fall = Math.exp(2 * thickness * insideIm);
    const qRe = fall * Math.cos(2 * thickness * insideRe);
    const qIm = -fall * Math.sin(2 * thickness * insideRe);
    seeThrough(out, 0, tmRe, tmIm, qRe, qIm);
    seeThrough(out, 2, insideRe, insideIm, qRe, qIm);
  }
}

const four = new Float64Array(4);

/** Surface immittance for vertical wavenumber `kz` (rad/m, Im <= 0) in the air. */
export function surfaceImmittance(kz: Complex, medium: LayeredMedium): SurfaceImmittance {
  writeImmittance(kz.re, kz.im, medium, four);
  return { tm: complex(four[0]!, four[1]!), te: complex(four[2]!, four[3]!) };
}

/** Coefficients of the tangential electric field for vertical wavenumber `kz`, as of `reflection` for a half-space. */
export function layeredReflection(
  kz: Complex,
  medium: LayeredMedium,
): { readonly tm: Complex; readonly te: Complex; readonly surface: SurfaceImmittance } {
  const surface = surfaceImmittance(kz, medium);
  return {
    tm: divide(subtract(surface.tm, kz), add(surface.tm, kz)),
    te: divide(subtract(kz, surface.te), add(kz, surface.te)),
    surface,
  };
}
