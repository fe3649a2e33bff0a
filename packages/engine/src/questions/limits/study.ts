/** The station worked out, everything with a limit, and how far all that is uncertain moves the first of them. */
import type { WorkedPart } from "../../chain/workedPoint";
import { between } from "../../quantity/quantity";
import type { Station } from "../../station/station";
import { combine, type InputEffect, type Numbers } from "../common/bounds";
import type { Context, Parameters, Progress } from "../common/question";
import { type CannotWork, type Worked, workStation } from "../common/worked";
import { type Asked, askedOf, type Conditions, usualConditions } from "./conditions";
import { type Doubt, doubtsOf } from "./doubts";
import { firstToFail, type LimitFact, marginOf } from "./limitFact";
import { limitsOf } from "./limitsOf";
import { type LineHeat, lineHeat } from "./lineHeat";

export interface LineStudy {
  readonly part: WorkedPart;
  readonly heat: LineHeat | null;
}

export interface Study {
  readonly worked: Worked;
  readonly asked: Asked;
  readonly conditions: Conditions;
  readonly doubts: readonly Doubt[];
  /** What fails first comes first; at least one. */
  readonly facts: readonly [LimitFact, ...LimitFact[]];
  /** Lines in use, in path order. */
  readonly lines: readonly LineStudy[];
}

export const limitUnits: Readonly<Record<string, string>> = {
  leastMargin: "dB",
  leastVoltageMargin: "dB",
  leastHeatMargin: "dB",
  powerAtFirstLimit: "W",
  greatestPeakVoltage: "V",
  hottestConductor: "°C",
};

/** The numbers that bounds are worked out for; null where nothing of the kind has a limit. */
function numbersOf(facts: readonly LimitFact[], power: number): Numbers {
  const least = (kinds: readonly LimitFact["of"][]): number | null => {
    const times = facts.filter((fact) => kinds.includes(fact.of)).map((fact) => fact.times);
    return times.length > 0 ? marginOf(Math.min(...times)) : null;
  };
  const all = least(["voltage", "glow", "sparkover", "temperature", "heat"]);
  const volts = facts.filter((fact) => fact.unit === "V peak").map((fact) => fact.value);
  const degrees = facts.filter((fact) => fact.of === "temperature").map((fact) => fact.value);
  return {
    leastMargin: all,
    leastVoltageMargin: least(["voltage", "glow", "sparkover"]),
    leastHeatMargin: least(["temperature", "heat"]),
    powerAtFirstLimit: all === null ? null : power * 10 ** (all / 10),
    greatestPeakVoltage: volts.length > 0 ? Math.max(...volts) : null,
    hottestConductor: degrees.length > 0 ? Math.max(...degrees) : null,
  };
}

export function* studyLimits(
  station: Station,
  parameters: Parameters,
  context: Context,
): Generator<Progress, Study | CannotWork> {
  const asked = askedOf(station, parameters);
  const conditions = usualConditions(asked);
  const worked = yield* workStation(station, parameters, context, (point, { driven }) =>
    numbersOf(limitsOf(point, driven, conditions), point.powerFromTransmitter),
  );
  if ("refused" in worked) return worked;
  const { point } = worked;
  const [first, ...rest] = firstToFail(limitsOf(point, worked.result.driven, conditions));
  if (!first)
    return {
      refused: "nothing of this station has a limit that is known",
      mend: "a line of the catalogue or with its build, or a `voltage limit` or `heat limit` on a part of the path",
    };
  const doubts = doubtsOf(asked, conditions);
  const used = point.parts.filter((part) => part.edge.inUse && part.edge.part?.kind === "line");
  return {
    worked: withDoubts(worked, doubts),
    asked,
    conditions,
    doubts,
    facts: [first, ...rest],
    lines: used.map((part) => ({ part, heat: lineHeat(point, part, conditions) })),
  };
}

/** The bounds with the doubts of the conditions among the uncertain inputs. */
function withDoubts(worked: Worked, doubts: readonly Doubt[]): Worked {
  const { point, result, bounds } = worked;
  const at = (conditions: Conditions): Numbers =>
    numbersOf(limitsOf(point, result.driven, conditions), point.powerFromTransmitter);
  const own = doubts.map(
    ({ name, place, low, high }): InputEffect => ({
      input: { name, place, places: [], quantities: [between(0, 1)] },
      atLow: at(low),
      atHigh: at(high),
    }),
  );
  const effects = [...bounds.effects, ...own];
  return { ...worked, bounds: { ...bounds, ...combine(bounds.nominal, effects), effects } };
}
