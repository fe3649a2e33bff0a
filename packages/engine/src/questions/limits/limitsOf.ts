/** Everything of a worked station that has a limit, under one set of conditions. */
import type { WorkedPart, WorkedPoint } from "../../chain/workedPoint";
import type { DrivenAntenna } from "../../wires/driveAntenna";
import type { Conditions } from "./conditions";
import { connectorLimits } from "./connectorLimits";
import type { LimitFact } from "./limitFact";
import { lineLimits } from "./lineLimits";
import { chokeLimits, fixedVoltage, heatLimits } from "./statedLimits";
import { wireLimits } from "./wireEnds";

/** In path order, the antenna's wires last. */
export function limitsOf(point: WorkedPoint, driven: DrivenAntenna, conditions: Conditions): LimitFact[] {
  const parts = point.parts.filter((part) => part.edge.inUse);
  return [
    ...parts.flatMap((part) => partLimits(point, part, conditions)),
    ...chokeLimits(point, driven, conditions),
    ...wireLimits(point, driven, conditions),
  ];
}

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
