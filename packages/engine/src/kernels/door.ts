import type { Complex } from "../numerics/complex";
import type { KernelTables, PointMoments, ReflectedTerms } from "./reflected";
import type { PlaneWaves, RadiatingPoints } from "./waves";

/**
 * The door to the hot operations of the antenna engine. Everything above speaks to these only, so that the
 * readable twin in reference/ (which defines what is correct) can be exchanged for a faster one. Bulk numbers live
 * in typed arrays, complex ones split into re and im. SI units.
 */
export interface Kernels {
  /** Names the twin in answers. */
  readonly name: string;
  /** Static moments of all pairs too close for quadrature. Geometry only: may be kept over frequencies. */
  readonly nearMoments: (tests: Elements, sources: Elements) => NearMoments;
  /** Adds mixed-potential terms of the free-space kernel times factors, from `sources` onto `tests`, to the upper triangle. */
  readonly addPairTerms: (terms: PairTerms, matrix: SplitMatrix) => void;
  /** Sommerfeld integrals: sums the sampled spectrum at every distance rho with every height sum s (m), s fastest. */
  readonly sumSpectrum: (spectrum: Spectrum, rho: Float64Array, s: Float64Array) => SpectralSums;
  /** Adds what the soil reflects to the upper triangle: j w mu0 P^T A P + (1/(j w eps0)) Q^T K Q. */
  readonly addReflectedTerms: (terms: ReflectedTerms, matrix: SplitMatrix) => void;
  /**
   * Sum over all pairs of points of G_xx m m + K q q + G_zz n n + Im(G_zz) q n, tables of real kernels: m moments along
   * the soil, n upright ones, q charges; W.
   */
  readonly sumPairPower: (moments: PointMoments, tables: KernelTables) => number;
  /** Sums of current moments with the phases of plane waves, `numbersOfWave` numbers each. */
  readonly sumWaves: (points: RadiatingPoints, waves: PlaneWaves) => Float64Array;
  /** Solves the complex symmetric system (upper triangle given) for several right-hand sides. */
  readonly solveSymmetric: (matrix: SplitMatrix, rightSides: SplitVectors) => SymmetricSolution;
}

/** Square, row-major, `size` x `size`. */
export interface SplitMatrix {
  readonly size: number;
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** `count` vectors of `length` numbers, one after another. */
export interface SplitVectors {
  readonly count: number;
  readonly length: number;
  readonly re: Float64Array;
  readonly im: Float64Array;
}

export interface SymmetricSolution {
  readonly vectors: SplitVectors;
  readonly method: "LDL^T without pivoting" | "LU with partial pivoting";
  /** Largest number met in the factorisation over the largest of the matrix. */
  readonly growth: number;
  /** Largest |b - A x| over (norm of A times norm of x), infinity norms. */
  readonly residual: number;
}

/** Straight elements of round wire. `start` and `direction` (unit vectors) hold three numbers each; metres. */
export interface Elements {
  readonly count: number;
  readonly start: Float64Array;
  readonly direction: Float64Array;
  readonly length: Float64Array;
  readonly radius: Float64Array;
}

/** Near pairs (test e, source f >= e), row by row: sources of row e are `column[rowStart[e] .. rowStart[e + 1] - 1]`. */
export interface NearMoments {
  readonly rowStart: Int32Array;
  readonly column: Int32Array;
  /**
   * Four numbers a pair (metres): mean over both surfaces of the double integral of ramp_i ramp_j / R, in the order
   * falling-falling, falling-rising, rising-falling, rising-rising (test first). Falling means 1 at the start.
   */
  readonly moments: Float64Array;
}

/**
 * Which unknowns live on which element end: those of end i (0 start, 1 end) of element e are
 * `unknown[first[2e + i] .. first[2e + i + 1] - 1]`, each with the sign of its current along the element.
 */
export interface Scatter {
  readonly first: Int32Array;
  readonly unknown: Int32Array;
  readonly sign: Float64Array;
}

export interface PairTerms {
  readonly tests: Elements;
  readonly sources: Elements;
  readonly near: NearMoments;
  readonly scatter: Scatter;
  /** rad/m */
  readonly wavenumber: number;
  /** w mu0 / (4 pi), ohm/m. */
  readonly vectorFactor: number;
  /** 1 / (4 pi w eps0), ohm m. */
  readonly scalarFactor: number;
  readonly factors: PairFactors;
  /**
   * Images among the elements under a symmetry that the unknowns of the scatter have (tests and sources numbered alike). The
   * pairs of images of one pair add up alike, so that one of them, so many times, does for all; a twin may as well add them
   * all. Left out: no symmetry.
   */
  readonly orbits?: Orbits;
}

/** For each element the first one among its images, itself included, and how many they are. */
export interface Orbits {
  readonly first: Int32Array;
  readonly size: Int32Array;
}

/**
 * What multiplies the free-space kernel of a pair: 1 for the wires themselves, -1 for their images in a perfect plane
 * (mirrored sources), complex strengths for quasi-static images in soil.
 */
export interface PairFactors {
  /** Of the level parts of both directions. */
  readonly level: Complex;
  /** Of the upright parts, as the sources' directions are given (those of images are mirrored). */
  readonly upright: Complex;
  readonly charge: Complex;
  /**
   * Of the kernel between a level and an upright current, for mirrored sources only, null without it:
   * (e^{-jks} - (s/R) e^{-jkR})/rho^2 times (t_z u_h - u_z t_h) . d, with t, u the directions of the wires themselves,
   * s the sum of their heights, d the horizontal distance (rho long) from source to test.
   */
  readonly cross: Complex | null;
}

/**
 * Samples of Sommerfeld integrands. Depth factor: e^{-j depth s}, Bessel function of radial times rho; the weights include
 * everything else.
 */
export interface Spectrum {
  /**
   * So many of the first nodes are waves of any wavenumbers; the others are evanescent: radial real, depth = -ja with a
   * growing from node to node, so that those that have decayed at some height sum may be left out.
   */
  readonly waves: number;
  /** Whether any current has a vertical part: else `vertical` and `cross` are not summed. */
  readonly steep: boolean;
  /** Horizontal wavenumber, rad/m, Re >= 0. */
  readonly radial: ComplexPlane;
  /** Vertical wavenumber in the air, rad/m, Im <= 0. */
  readonly depth: ComplexPlane;
  /** For J0. */
  readonly horizontal: ComplexPlane;
  readonly scalar: ComplexPlane;
  readonly vertical: ComplexPlane;
  /** For J1(x)/x. */
  readonly cross: ComplexPlane;
}

export interface ComplexPlane {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** One number a place: reflected kernels G_xx, K, G_zz (1/m) and T/rho (1/m^2). */
export interface SpectralSums {
  readonly horizontal: ComplexPlane;
  readonly scalar: ComplexPlane;
  readonly vertical: ComplexPlane;
  readonly cross: ComplexPlane;
}
