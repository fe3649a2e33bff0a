/** Limits of connectors by their class. */
import type { WorkedPart, WorkedPoint } from "../../chain/workedPoint";
import { magnitude } from "../../numerics/complex";
import { peekDensity } from "../../stress/airBreakdown";
import { connectorClass, connectorPower } from "../../stress/connectors";
import { type Conditions, shareOfTime } from "./conditions";
import { type LimitFact, timesOfVoltage } from "./limitFact";
import { peakOfPart } from "./partPeak";

/** Classes of connectors are known to a factor (from memory). */
const classDoubt = { low: 0.8, value: 1, high: 1.25 } as const;

export function connectorLimits(point: WorkedPoint, part: WorkedPart, conditions: Conditions): LimitFact[] {
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
