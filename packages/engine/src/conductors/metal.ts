/** Bulk metal. Type only. */

/** Bulk metal. Conductivity in S/m (Infinity for a perfect conductor), relative permeability. */
export interface Metal {
  readonly name: string;
  readonly conductivity: number;
  readonly permeability: number;
  /** Relative rise of the resistivity a kelvin, from 293.15 K; that of copper (0.00393, IEC 60028) when left out. */
  readonly temperatureCoefficient?: number;
}
