/** What the door's operations on pairs of sample points need: points, kernels as tables, projections. SI units. */

/** Reflected kernels at any distance rho (m) and height sum s (m) of a range, as polynomials. */
export interface KernelTable {
  /** Phase constant taken out of the kernels together with 4 pi R (R^2 for T/rho), rad/m; R = distance to the image. */
  readonly wavenumber: number;
  /** Whether G_zz and T/rho are in it. */
  readonly steep: boolean;
  /** From the lowest height sums upwards; sums between two bands belong to the upper one. */
  readonly bands: readonly TableBand[];
}

/** A range of height sums. */
export interface TableBand {
  /** Smallest and largest height sum, m. */
  readonly from: number;
  readonly to: number;
  /** Height sums (m, ascending) that have columns of their own; null: polynomials in ln s between `from` and `to`. */
  readonly sums: Float64Array | null;
  /** Length of the axis u = ln(1 + (rho/from)^2)/2. */
  readonly range: number;
  /** Edges of the pieces of the u axis, from 0 to `range`. */
  readonly edges: Float64Array;
  /** Chebyshev terms in u of each piece, and terms in ln s (or columns). */
  readonly termsInU: number;
  readonly termsInS: number;
  /** re, im of the kernels in order G_xx, K, G_zz, T/rho (planes fastest), at each term in s, term in u, piece. */
  readonly coefficients: Float64Array;
}

/** A table for pairs of low points, whose images are integrated elsewhere, and one for all others; null: no such pair. */
export interface KernelTables {
  readonly lessImages: KernelTable | null;
  readonly whole: KernelTable | null;
}

/** Places (m) and directions (unit vectors), three numbers each; whether low: 1 or 0. */
export interface KernelPoints {
  readonly count: number;
  readonly position: Float64Array;
  readonly direction: Float64Array;
  readonly low: Uint8Array;
}

/** Current and charge of unknown n at the points `point[first[n]] .. point[first[n + 1] - 1]`. */
export interface PointProjection {
  readonly first: Int32Array;
  readonly point: Int32Array;
  readonly current: Float64Array;
  readonly charge: Float64Array;
}

export interface ReflectedTerms {
  readonly points: KernelPoints & PointProjection;
  readonly tables: KernelTables;
  /** w mu0, ohm/m. */
  readonly vectorFactor: number;
  /** 1/(w eps0), ohm m. */
  readonly scalarFactor: number;
}

interface Plane {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

export interface PointMoments {
  readonly points: KernelPoints;
  /** Current moments, A m. */
  readonly current: Plane;
  /** Charge moments, A. */
  readonly charge: Plane;
}
