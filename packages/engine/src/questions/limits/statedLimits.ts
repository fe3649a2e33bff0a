/** Limits the file states itself, and the tuner's gap. */
import type { WorkedPart, WorkedPoint } from "../../chain/workedPoint";
import type { Quantity } from "../../quantity/quantity";
import { gapBreakdown } from "../../stress/airBreakdown";
import type { DrivenAntenna } from "../../wires/driveAntenna";
import { type Conditions, shareOfTime } from "./conditions";
import { type LimitFact, timesOfVoltage } from "./limitFact";
import { peakOfPart } from "./partPeak";

const endOf = (q: Quantity, { limits }: Conditions): number => q[limits];

/** Of a tuner and an arrestor. */
export function fixedVoltage(point: WorkedPoint, part: WorkedPart, conditions: Conditions): LimitFact[] {
  const own = part.edge.part;
  if (own?.kind === "tuner" && conditions.gap !== null) return gapLimit(point, part, conditions.gap, conditions);
  const stated = own?.kind === "tuner" ? own.voltageLimit : own?.kind === "arrestor" ? own.sparkover : null;
  if (!stated) return [];
  const value = peakOfPart(point, part);
  const limit = endOf(stated, conditions);
  return [
    {
      part: part.edge.name,
      of: own?.kind === "arrestor" ? "sparkover" : "voltage",
      value,
      limit,
      unit: "V peak",
      happens: own?.kind === "arrestor" ? "it fires and shorts the line" : "its voltage limit is passed",
      times: timesOfVoltage(value, limit),
      source: "the station file, taken as a peak value",
      at: null,
    },
  ];
}

/** Sharp plates, dust and damp take up to half of what clean wide plates stand (common practice, no source). */
const gapDoubt = { low: 0.5, value: 0.9, high: 1 } as const;

function gapLimit(point: WorkedPoint, part: WorkedPart, gap: number, conditions: Conditions): LimitFact[] {
  const value = peakOfPart(point, part);
  const limit = gapBreakdown(gap, conditions.air) * gapDoubt[conditions.limits];
  return [
    {
      part: part.edge.name,
      of: "voltage",
      value,
      limit,
      unit: "V peak",
      happens: `it flashes over across ${Number((1000 * gap).toPrecision(2))} mm of air`,
      times: timesOfVoltage(value, limit),
      source: "uniform field in air, a tenth less at radio frequency; Paschen's law in short gaps (from memory)",
      at: null,
    },
  ];
}

/** Of what warms with the mean; `heat` in W at peak envelope power. */
export function heatLimits(name: string, heat: number, stated: Quantity | null, conditions: Conditions): LimitFact[] {
  if (!stated) return [];
  const value = heat * conditions.duty * shareOfTime(conditions.sending);
  const limit = endOf(stated, conditions);
  return [
    {
      part: name,
      of: "heat",
      value,
      limit,
      unit: "W",
      happens: "its heat limit is passed",
      times: value > 0 ? limit / value : Number.POSITIVE_INFINITY,
      source: "the station file",
      at: null,
    },
  ];
}

/** Chokes on the outside of a line in the model; those at one joint share its heat by their resistances. */
export function chokeLimits(point: WorkedPoint, driven: DrivenAntenna, conditions: Conditions): LimitFact[] {
  const omega = 2 * Math.PI * point.frequency;
  const scale = point.powerIntoAntenna / driven.powerIn;
  return point.antenna.build.outside.flatMap(({ chokes }) =>
    chokes.flatMap(({ names, gap, impedances, heatLimits: limits }) => {
      const resistances = impedances.map((z) => z?.(omega).re ?? 0);
      const total = resistances.reduce((sum, r) => sum + r, 0);
      const heat = (driven.closingHeat[gap] ?? 0) * scale;
      return names.flatMap((name, i) => {
        const limit = limits[i];
        const share = total > 0 ? resistances[i]! / total : 0;
        const stated: Quantity | null = limit ? { value: limit, low: limit, high: limit, basis: "stated" } : null;
        return heatLimits(name, heat * share, stated, conditions);
      });
    }),
  );
}
