/** What the door takes and gives for sums of currents with the phases of plane waves. */
/** Current moments at points of round wires: positions (m) and unit directions of three numbers each, radii (m), A m. */
export interface RadiatingPoints {
  readonly count: number;
  readonly position: Float64Array;
  readonly direction: Float64Array;
  readonly radius: Float64Array;
  readonly moments: { readonly re: Float64Array; readonly im: Float64Array };
}

/** Plane waves, one number each: level wavenumber (rad/m), its angle from x towards y (rad), upright wavenumber with its sign. */
export interface PlaneWaves {
  readonly radial: Float64Array;
  readonly phi: Float64Array;
  readonly upright: Float64Array;
}

/** Numbers a wave in what sumWaves gives: re, im of the radiation vector along the plane of incidence, across it, upwards, A m. */
export const numbersOfWave = 6;
