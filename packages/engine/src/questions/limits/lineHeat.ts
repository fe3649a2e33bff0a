/** The hottest place of a line of the path, and how hot it gets. */
import type { WorkedPart, WorkedPoint } from "../../chain/workedPoint";
import { lineConstants } from "../../lines/lineConstants";
import type { LinePart, Lying } from "../../station/path";
import { greatestAlong, type Squares, type StandingWave, squaresAt, standingWave } from "../../stress/standingWave";
import {
  atRest,
  type Drive,
  heatAt,
  spreadLength,
  steadyTemperatures,
  swingLeft,
  type Temperatures,
  timesToReach,
} from "../../stress/steadyHeat";
import type { Leaving } from "../../stress/surroundings";
import { type ThermalLine, thermalLine } from "../../stress/thermalLine";
import { warmInTurns, warmOver } from "../../stress/transientHeat";
import { type Conditions, type Sending, soilTemperature } from "./conditions";
import { leavingHeat, lyingOf } from "./lying";

export interface LineHeat {
  readonly thermal: ThermalLine;
  readonly lies: Lying;
  readonly leaving: Leaving;
  /** K of what the heat goes to. */
  readonly ambient: number;
  /** Mean squares while sending at the hottest place. */
  readonly drive: Drive;
  /** m from the transmitter's end of the line. */
  readonly at: number;
  /** At the hottest moment. */
  readonly temperatures: Temperatures;
  /** W/m there, mean while sending. */
  readonly watts: number;
  /** m over which heat spreads along the metal, and the share of the standing wave it leaves. */
  readonly spread: number;
  readonly swing: number;
  /** Times the power may be raised until the insulation's limit is reached. */
  readonly times: number;
}

/** The wave on a line of the path; null where nothing is known at its far end. */
export function waveOf(point: WorkedPoint, part: WorkedPart): StandingWave | null {
  const end = point.joints.find((joint) => joint.name === part.to);
  if (part.edge.part?.kind !== "line" || !end || !(part.length > 0)) return null;
  return standingWave(constantsOfLine(part.edge.part, point.frequency), part.length, end);
}

const constantsOfLine = (part: LinePart, frequency: number) =>
  lineConstants(part.line.model, frequency, {
    excessDecibelsPerMetre: part.excessLoss.value,
    temperature: part.temperature?.value ?? null,
  });

/** Temperatures at the hottest moment under a drive while sending. */
export function hottest(
  line: ThermalLine,
  drive: Drive,
  leaving: Leaving,
  ambient: number,
  sending: Sending,
): Temperatures {
  if (sending.kind === "endless") return steadyTemperatures(line, drive, leaving, ambient);
  if (sending.kind === "once") {
    const rest = atRest(line, leaving, ambient);
    return warmOver(line, rest, drive, leaving, { seconds: sending.seconds, steps: 60 }).temperatures.at(-1)!;
  }
  const share = sending.rhythm.on / sending.rhythm.of;
  const mean = { current: share * drive.current, voltage: share * drive.voltage };
  const start = steadyTemperatures(line, mean, leaving, ambient);
  if (share >= 1) return start;
  const { temperatures } = warmInTurns(line, start, drive, leaving, { rhythm: sending.rhythm, rounds, steps });
  return temperatures.slice(-2 * steps - 1).reduce((a, b) => (b.inner > a.inner ? b : a));
}

/** Turns from the mean on until they repeat, and steps in each half. */
const rounds = 5;
const steps = 16;

const scaled = ({ current, voltage }: Squares, by: number): Drive => ({ current: by * current, voltage: by * voltage });

/** Heat of a line of the path; null where its build is not known. */
export function lineHeat(point: WorkedPoint, part: WorkedPart, conditions: Conditions): LineHeat | null {
  const line = part.edge.part;
  const wave = waveOf(point, part);
  if (line?.kind !== "line" || wave === null) return null;
  const thermal = thermalLine(line.line, point.frequency, line.excessLoss.value);
  if (thermal === null) return null;
  const { lies } = lyingOf(line, conditions.lies);
  const ambient = lies === "buried" ? soilTemperature : conditions.air.temperature;
  const leaving = leavingHeat(line, thermal, lies, conditions);
  const weigh = ({ current, voltage }: Squares): number =>
    (thermal.inner + thermal.outer) * current + thermal.conductance * voltage;
  const sharp = greatestAlong(wave, weigh);
  const first = scaled(squaresAt(wave, sharp.distance), conditions.duty);
  const spread = spreadAt(thermal, first, leaving, ambient);
  // On a drum turn lies on turn: no place is hotter than its neighbours by its own wave.
  const swing = lies === "on a drum" ? 0 : swingLeft(wave.phase, spread);
  const hot = greatestAlong(wave, weigh, swing);
  const drive = scaled(squaresAt(wave, hot.distance, swing), conditions.duty);
  const at = (times: number) => hottest(thermal, scaled(drive, times), leaving, ambient, conditions.sending);
  const temperatures = at(1);
  const heat = heatAt(thermal, drive, temperatures);
  return {
    thermal,
    lies,
    leaving,
    ambient,
    drive,
    at: part.length - hot.distance,
    temperatures,
    watts: heat.inner + heat.insulation + heat.outer,
    spread,
    swing,
    times: timesToReach((times) => at(times).inner, thermal.greatestTemperature),
  };
}

function spreadAt(thermal: ThermalLine, drive: Drive, leaving: Leaving, ambient: number): number {
  const t = steadyTemperatures(thermal, drive, leaving, ambient);
  const heat = heatAt(thermal, drive, t);
  const rest = atRest(thermal, leaving, ambient);
  return spreadLength(thermal, t, rest, heat.inner + heat.insulation + heat.outer);
}
