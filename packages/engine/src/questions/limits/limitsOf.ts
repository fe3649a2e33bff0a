/** Everything of a worked station that has a limit, under one set of conditions. */
import type { WorkedJoint, WorkedPart, WorkedPoint } from "../../chain/workedPoint";
import { magnitude } from "../../numerics/complex";
import type { Quantity } from "../../quantity/quantity";
import { gapBreakdown, peekDensity } from "../../stress/airBreakdown";
import { connectorClass, connectorPower } from "../../stress/connectors";
import { decidingLimit, lineVoltageLimits } from "../../stress/lineVoltage";
import { greatestAlong } from "../../stress/standingWave";
import type { DrivenAntenna } from "../../wires/driveAntenna";
import { type Conditions, shareOfTime } from "./conditions";
import { type LimitFact, timesOfVoltage } from "./limitFact";
import { lineHeat, waveOf } from "./lineHeat";
import { hardestWire } from "./wireEnds";

/** In path order, the antenna's wires last. */
export function limitsOf(point: WorkedPoint, driven: DrivenAntenna, conditions: Conditions): LimitFact[] {
  const parts = point.parts.filter((part) => part.edge.inUse);
  return [
    ...parts.flatMap((part) => partLimits(point, part, conditions)),
    ...chokeLimits(point, driven, conditions),
    ...wireLimits(point, driven, conditions),
  ];
}

const peakAt = (joint: WorkedJoint | undefined): number => (joint ? Math.SQRT2 * magnitude(joint.voltage) : 0);

/** V peak at the higher of a part's two joints. */
export const peakOfPart = (point: WorkedPoint, part: WorkedPart): number =>
  Math.max(...[part.from, part.to].map((name) => peakAt(point.joints.find((joint) => joint.name === name))));

function partLimits(point: WorkedPoint, part: WorkedPart, conditions: Conditions): LimitFact[] {
  switch (part.edge.part?.kind) {
    case "line":
      return lineLimits(point, part, conditions);
    case "connector":
      return connectorLimits(point, part, conditions);
    case "tuner":
    case "arrestor":
      return fixedVoltage(point, part, conditions);
    case "balun":
    case "transformer":
      return heatLimits(part.edge.name, part.heat, part.edge.part.heatLimit, conditions);
    default:
      return [];
  }
}

const endOf = (q: Quantity, { limits }: Conditions): number => q[limits];

function lineLimits(point: WorkedPoint, part: WorkedPart, conditions: Conditions): LimitFact[] {
  const line = part.edge.part;
  const wave = waveOf(point, part);
  if (line?.kind !== "line" || wave === null) return [];
  const facts: LimitFact[] = [];
  const limit = decidingLimit(lineVoltageLimits(line.line, conditions.air));
  if (limit) {
    const highest = greatestAlong(wave, (s) => s.voltage);
    const value = Math.sqrt(2 * highest.value);
    const bears = limit[conditions.limits === "value" ? "peak" : conditions.limits];
    facts.push({
      part: part.edge.name,
      of: limit.kind === "glow" ? "glow" : "voltage",
      value,
      limit: bears,
      unit: "V peak",
      happens: limit.says,
      times: timesOfVoltage(value, bears),
      source: limit.source,
      at: part.length - highest.distance,
    });
  }
  const heat = lineHeat(point, part, conditions);
  if (heat) {
    const drift = softening[conditions.limits];
    facts.push({
      part: part.edge.name,
      of: "temperature",
      value: heat.temperatures.inner - 273.15,
      limit: heat.thermal.greatestTemperature - 273.15,
      unit: "°C",
      happens: `its conductor passes ${Math.round(heat.thermal.greatestTemperature - 273.15)} °C`,
      times: heat.times * drift,
      source: heat.thermal.limitSource,
      at: heat.at,
    });
  }
  return facts;
}

/** A limit of temperature is soft: a tenth of the power either way (our estimate). */
const softening = { low: 0.9, value: 1, high: 1.1 } as const;

/** Classes of connectors are known to a factor (from memory). */
const classDoubt = { low: 0.8, value: 1, high: 1.25 } as const;

function connectorLimits(point: WorkedPoint, part: WorkedPart, conditions: Conditions): LimitFact[] {
  const connector = part.edge.part;
  const known = connector?.kind === "connector" ? connectorClass(connector.series) : null;
  if (!known) return [];
  const peak = peakOfPart(point, part);
  const volts = known.peakVoltage * Math.min(1, peekDensity(conditions.air)) * classDoubt[conditions.limits];
  const joint = point.joints.find((one) => one.name === part.to);
  // Contacts warm by the current: a matched line of the transmitter's impedance carries √(P/R).
  const watts = joint
    ? magnitude(joint.current) ** 2 * point.ratedResistance * conditions.duty * shareOfTime(conditions.sending)
    : 0;
  const bears = connectorPower(known, point.frequency) * classDoubt[conditions.limits] ** 2;
  const common = { part: part.edge.name, source: known.source, at: null };
  return [
    {
      ...common,
      of: "voltage",
      value: peak,
      limit: volts,
      unit: "V peak",
      happens: `the voltage of its class (${known.name}) is passed`,
      times: timesOfVoltage(peak, volts),
    },
    {
      ...common,
      of: "heat",
      value: watts,
      limit: bears,
      unit: "W",
      happens: `the mean power of its class (${known.name}) is passed`,
      times: watts > 0 ? bears / watts : Number.POSITIVE_INFINITY,
    },
  ];
}

function fixedVoltage(point: WorkedPoint, part: WorkedPart, conditions: Conditions): LimitFact[] {
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

function heatLimits(name: string, heat: number, stated: Quantity | null, conditions: Conditions): LimitFact[] {
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
function chokeLimits(point: WorkedPoint, driven: DrivenAntenna, conditions: Conditions): LimitFact[] {
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

/** Wet wire and rough ends glow from half the field (common practice, no source). */
const wireDoubt = { low: 0.5, value: 1, high: 1.05 } as const;

function wireLimits(point: WorkedPoint, driven: DrivenAntenna, conditions: Conditions): LimitFact[] {
  const found = hardestWire(point, driven, conditions.air);
  if (!found) return [];
  const limit = (found.onset * wireDoubt[conditions.limits]) / 1e5;
  const value = found.field / 1e5;
  return [
    {
      part: "",
      of: "glow",
      value,
      limit,
      unit: "kV/cm peak",
      happens: "the air round the ends of the antenna's wires glows",
      times: timesOfVoltage(value, limit),
      source: "Peek's law, weathered wire (handbook)",
      at: null,
    },
  ];
}
