/** How much of what a line bears it is asked for: voltage against its limit, mean power against the heat of its insulation. */
import type { LineEntry } from "../../lines/lineModel";
import { decidingLimit, lineVoltageLimits, type VoltageLimit } from "../../stress/lineVoltage";
import { greatestAlong, type Squares, type StandingWave, squaresAt } from "../../stress/standingWave";
import {
  atRest,
  type Drive,
  heatAt,
  spreadLength,
  steadyTemperatures,
  swingLeft,
  timesToReach,
} from "../../stress/steadyHeat";
import { type Leaving, leavingOf } from "../../stress/surroundings";
import { type ThermalLine, thermalLine } from "../../stress/thermalLine";
import type { Around } from "./surroundings";

export interface VoltageUse {
  /** Highest peak voltage at peak envelope power over the limit. */
  readonly share: number;
  readonly limit: VoltageLimit;
}

/** `highest` in V rms. Null where nothing is known of what the line stands. */
export function voltageUse(entry: LineEntry, highest: number, { air }: Around): VoltageUse | null {
  const limit = decidingLimit(lineVoltageLimits(entry, air));
  return limit && { share: (Math.SQRT2 * highest) / limit.peak, limit };
}

/** K and K m/W of soil far from a buried line, m of its depth: IEC 60287-3-1 (from memory), and a spade's. */
const soil = { temperature: 293.15, resistivity: 1, depth: 0.5 };
/** W/m² square to the sun: IEC 60287-1-1 (from memory); a conduit three times as wide as the line. */
const site = { irradiance: 1000, conduit: 3, soil };

export interface Sending {
  readonly frequency: number;
  readonly wave: StandingWave;
  /** m */
  readonly length: number;
  /** dB/m over new. */
  readonly excess: number;
}

/**
 * Times the power may be raised until the hottest place of the line, sending without end at the mean of `duty`, reaches what its
 * insulation bears; null where its build is not known.
 */
export function powerMargin(entry: LineEntry, around: Around, sending: Sending): number | null {
  const thermal = thermalLine(entry, sending.frequency, sending.excess);
  if (thermal === null) return null;
  const ambient = around.lies === "buried" ? soil.temperature : around.air.temperature;
  const leaving = leavingOf(around.lies, thermal.surface, { ...site, air: around.air }, sending.length);
  const drive = hottestDrive(thermal, sending.wave, { duty: around.duty, leaving, ambient });
  const inner = (times: number): number => steadyTemperatures(thermal, scaled(drive, times), leaving, ambient).inner;
  const times = timesToReach(inner, thermal.greatestTemperature);
  return Number.isFinite(times) ? times : null;
}

const scaled = ({ current, voltage }: Squares, by: number): Drive => ({ current: by * current, voltage: by * voltage });

/** Where the standing wave heats most, once conduction along the metal has levelled it. */
function hottestDrive(
  thermal: ThermalLine,
  wave: StandingWave,
  { duty, leaving, ambient }: { readonly duty: number; readonly leaving: Leaving; readonly ambient: number },
): Drive {
  const weigh = ({ current, voltage }: Squares): number =>
    (thermal.inner + thermal.outer) * current + thermal.conductance * voltage;
  const sharp = scaled(squaresAt(wave, greatestAlong(wave, weigh).distance), duty);
  const t = steadyTemperatures(thermal, sharp, leaving, ambient);
  const { inner, insulation, outer } = heatAt(thermal, sharp, t);
  const rest = atRest(thermal, leaving, ambient);
  const swing = swingLeft(wave.phase, spreadLength(thermal, t, rest, inner + insulation + outer));
  return scaled(squaresAt(wave, greatestAlong(wave, weigh, swing).distance, swing), duty);
}
