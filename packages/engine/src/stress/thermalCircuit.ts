/** What a line is to its heat. Type only. */
import type { RoundSurface } from "./surfaceHeat";

/** One round thing that warms: a coaxial line, or one wire of a pair. Everything per metre. */
export interface ThermalLine {
  /** Ohm/m at 20 °C of the inner conductor (a pair: of one wire) and of the outer (a pair: 0); S/m of the insulation's loss. */
  readonly inner: number;
  readonly outer: number;
  readonly conductance: number;
  /** Relative rise of the resistivity a kelvin. */
  readonly coefficient: number;
  /** K m/W of insulation and jacket. */
  readonly insulation: number;
  readonly jacket: number;
  /** J/(m K) that warm with the inner conductor, with the outer, with the surface. */
  readonly capacities: readonly [number, number, number];
  readonly surface: RoundSurface;
  /** W m/K along inner and outer metal. */
  readonly axial: number;
  /** K the insulation bears for long, and why. */
  readonly greatestTemperature: number;
  readonly limitSource: string;
  /** Sentences on what was taken for lack of knowledge. */
  readonly notes: readonly string[];
}
