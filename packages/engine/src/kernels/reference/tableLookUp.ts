/** Reads kernels from a table. */
import type { KernelTable, TableBand } from "../reflected";

/** The band of a height sum (m): the last that starts at or below it, or the first. */
export function bandOf({ bands }: KernelTable, s: number): TableBand {
  let found = bands[0]!;
  for (const band of bands) if (band.from <= s * (1 + 1e-9)) found = band;
  return found;
}

/** Chebyshev polynomials at x, clamped to [-1, 1]. */
function chebyshevRow(x: number, count: number, row: Float64Array): void {
  const inside = Math.min(1, Math.max(-1, x));
  row[0] = 1;
  row[1] = inside;
  for (let k = 2; k < count; k++) row[k] = 2 * inside * row[k - 1]! - row[k - 2]!;
}

/** Weights of the terms in s: polynomials, or 1 for the column nearest to it. */
function sumRow(band: TableBand, s: number, row: Float64Array): void {
  const { sums, from, to, termsInS } = band;
  if (!sums) {
    chebyshevRow((2 * Math.log(s / from)) / Math.log(to / from) - 1, termsInS, row);
    return;
  }
  let nearest = 0;
  for (let c = 1; c < sums.length; c++) if (Math.abs(sums[c]! - s) < Math.abs(sums[nearest]! - s)) nearest = c;
  row.fill(0, 0, termsInS);
  row[nearest] = 1;
}

const mostTerms = 64;
const uRow = new Float64Array(mostTerms);
const sRow = new Float64Array(mostTerms);
const values = new Float64Array(8);

/** Writes sums of terms into `values`; `piece` counts along u. */
function combine({ termsInU, termsInS, coefficients }: TableBand, piece: number, planes: number): void {
  let at = piece * termsInU * termsInS * planes;
  values.fill(0);
  for (let i = 0; i < termsInU; i++) {
    for (let j = 0; j < termsInS; j++) {
      const weight = uRow[i]! * sRow[j]!;
      for (let plane = 0; plane < planes; plane++, at++) values[plane]! += weight * coefficients[at]!;
    }
  }
}

/** Writes re, im of G_xx, K, G_zz (1/m) and T/rho (1/m^2) at horizontal distance rho and height sum s (m). */
export function lookUp(table: KernelTable, rho: number, s: number, out: Float64Array): void {
  const band = bandOf(table, s);
  const { edges, from, termsInU } = band;
  const u = Math.min(0.5 * Math.log1p((rho / from) ** 2), band.range);
  let piece = 0;
  while (piece < edges.length - 2 && u > edges[piece + 1]!) piece++;
  chebyshevRow((2 * (u - edges[piece]!)) / (edges[piece + 1]! - edges[piece]!) - 1, termsInU, uRow);
  sumRow(band, s, sRow);
  const planes = table.steep ? 8 : 4;
  combine(band, piece, planes);
  const r = Math.sqrt(rho * rho + s * s);
  const c = Math.cos(table.wavenumber * r) / (4 * Math.PI * r);
  const q = -Math.sin(table.wavenumber * r) / (4 * Math.PI * r);
  out.fill(0);
  for (let plane = 0; plane < planes; plane += 2) {
    const scale = plane === 6 ? 1 / r : 1;
    out[plane] = scale * (values[plane]! * c - values[plane + 1]! * q);
    out[plane + 1] = scale * (values[plane]! * q + values[plane + 1]! * c);
  }
}
