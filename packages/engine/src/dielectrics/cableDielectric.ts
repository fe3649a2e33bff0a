/** A dielectric with what it stands and how it carries heat. Types only. */
import type { Dielectric } from "./dielectric";

export interface CableDielectric extends Dielectric {
  /** Field in V/m, peak, at which the insulation itself breaks down in a short test. */
  readonly breakdown: number;
  readonly source: string;
  readonly breakdownSource: string;
  /** W/(m K), kg/m^3 and J/(kg K), with where all three and the greatest temperature come from. */
  readonly thermalConductivity: number;
  readonly density: number;
  readonly specificHeat: number;
  readonly thermalSource: string;
}
