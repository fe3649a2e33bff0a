/** The little of a driven antenna that its far field comes from: a solved one has it, and one interpolated between solves. */
import type { SamplePoints } from "./samplePoints";
import type { Soil } from "./structure";

export interface Radiating {
  readonly solution: {
    /** Hz */
    readonly frequency: number;
    readonly soil: Soil;
    readonly model: { readonly points: SamplePoints };
  };
  /** Current moments of the sample points, A m rms. */
  readonly moments: { readonly re: Float64Array; readonly im: Float64Array };
  /** W */
  readonly powerIn: number;
}
