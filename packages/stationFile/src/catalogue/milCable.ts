/** A cable of MIL-DTL-17 from what its sheet gives. */
import type { Dielectric, OuterConductor, RoundConductor } from "@feedpath/engine";
import type { CatalogueLine, LineFamily, LineSource } from "./catalogueLine";
import { braidSays, fromMemory, known, type LossRow, lossPoints } from "./lineParts";
import { fiveDiameters, milVoltage, type Rated, temperature, together, weight } from "./lineRatings";

/** Dimensions in m, capacitance in pF/ft as printed, weight in kg/m, loss in dB per 100 ft. */
export interface MilCable {
  readonly designation: string;
  readonly family: LineFamily;
  readonly about: string;
  /** "M17/74", or null for a cable of the older list only. */
  readonly sheet: string | null;
  readonly impedance: readonly [ohms: number, tolerance: number];
  readonly velocityFactor: number;
  readonly material: "polyethylene" | "PTFE";
  readonly insulation: Dielectric;
  readonly inner: RoundConductor;
  readonly innerSays: string;
  readonly outer: OuterConductor;
  readonly outerSays: string;
  readonly jacket: number;
  readonly capacitance: number;
  readonly loss: readonly LossRow[];
  /** Greatest loss over the nominal one; 1.15 when left out. */
  readonly lossHigh?: number;
  readonly voltage: readonly [older: number, later: number | null];
  readonly weight: number;
  /** Statuses that are better than memory. */
  readonly confirmed?: Partial<Record<"impedance" | "build" | "jacket" | "voltage", string>>;
  /** Further sources, and what is more to say of it. */
  readonly more?: Rated;
}

const picofaradsPerFoot = 1e-12 / 0.3048;
const millimetres = (metres: number): string => `${Number((1000 * metres).toFixed(2))} mm`;

/** What confirms values beyond memory. */
export const transcription = "published, confirmed in a transcription of the sheet (2004)";
export const compilation = "published, confirmed in a compilation of coaxial data";

function sourcesOf(cable: MilCable, sheet: string): LineSource[] {
  const { impedance, velocityFactor, material, confirmed = {} } = cable;
  const status = (of: keyof typeof confirmed): string => confirmed[of] ?? fromMemory;
  return [
    { of: ["impedance"], value: `${impedance[0]} ± ${impedance[1]} Ω`, source: sheet, status: status("impedance") },
    {
      of: ["velocity factor"],
      value: `velocity factor ${velocityFactor} ± 0.005`,
      source: velocityFactor < 0.7 ? `solid ${material}, MIL-DTL-17 lists` : `air-spaced ${material}, MIL-DTL-17 lists`,
      status: fromMemory,
    },
    {
      of: ["loss"],
      value: "attenuation, nominal at 20 °C, ± 15 %",
      source: `${sheet} and handbook tables`,
      status: `${fromMemory}; cable sold under the old name need not meet the sheet`,
    },
    {
      of: ["build"],
      value: `${cable.innerSays}; ${millimetres(2 * cable.outer.innerRadius)} over the insulation; ${cable.outerSays}: ${braidSays(cable.outer)}`,
      source: sheet,
      status: `${status("build")}; carriers and wires of the braid from memory, chosen to cover what its class covers`,
    },
    { of: ["jacket"], value: `${millimetres(cable.jacket)} over the jacket`, source: sheet, status: status("jacket") },
    {
      of: ["capacitance"],
      value: `${cable.capacitance} pF/ft, ± 4 %`,
      source: sheet,
      status: status("build"),
    },
  ];
}

export function milCable(cable: MilCable): CatalogueLine {
  const { designation, impedance, capacitance } = cable;
  const sheet = cable.sheet === null ? "MIL-C-17, older list" : `MIL-DTL-17 sheet ${cable.sheet}`;
  const farads = capacitance * picofaradsPerFoot;
  const rated = together(
    milVoltage(...cable.voltage, sheet, cable.confirmed?.voltage),
    temperature(cable.material),
    weight(cable.weight),
    fiveDiameters(cable.jacket),
    ...(cable.more ? [cable.more] : []),
  );
  return {
    designation,
    family: cable.family,
    about: cable.about,
    model: {
      kind: "data sheet",
      side: "coaxial",
      impedance: known(...impedance, `impedance of ${designation}`),
      velocityFactor: known(cable.velocityFactor, 0.005, `velocity factor of ${designation}`),
      loss: lossPoints(designation, cable.loss, 0.85, cable.lossHigh ?? 1.15),
    },
    build: { kind: "coaxial", inner: cable.inner, outer: cable.outer, dielectric: cable.insulation },
    jacketDiameter: cable.jacket,
    ratings: {
      ...rated.ratings,
      capacitance: { value: farads, low: 0.96 * farads, high: 1.04 * farads, basis: "catalogue" },
    },
    sources: [...sourcesOf(cable, sheet), ...rated.sources],
  };
}
