/** The two ways in which lengths and weights of lines are read. */
export type LineUnits = "metric" | "imperial";

const foot = 0.3048;
const inch = 0.0254;
const pound = 0.453_592_37;

export interface LineUnit {
  /** "100 m". */
  readonly run: string;
  /** m. */
  readonly runLength: number;
  readonly thickness: string;
  readonly perThickness: number;
  readonly weight: string;
  /** kg/m of one. */
  readonly perWeight: number;
  readonly length: string;
  readonly perLength: number;
}

export const lineUnits: Readonly<Record<LineUnits, LineUnit>> = {
  metric: {
    run: "100 m",
    runLength: 100,
    thickness: "mm",
    perThickness: 1e-3,
    weight: "kg/100 m",
    perWeight: 0.01,
    length: "m",
    perLength: 1,
  },
  imperial: {
    run: "100 ft",
    runLength: 100 * foot,
    thickness: "in",
    perThickness: inch,
    weight: "lb/100 ft",
    perWeight: pound / (100 * foot),
    length: "ft",
    perLength: foot,
  },
};
