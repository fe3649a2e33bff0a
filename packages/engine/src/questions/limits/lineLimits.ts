/** Limits of a line of the path: its voltage, and the temperature of its insulation. */
import type { WorkedPart, WorkedPoint } from "../../chain/workedPoint";
import { isPair } from "../../station/isPair";
import { decidingLimit, lineVoltageLimits } from "../../stress/lineVoltage";
import { greatestAlong } from "../../stress/standingWave";
import type { Conditions } from "./conditions";
import { type LimitFact, timesOfVoltage } from "./limitFact";
import { lineHeat, waveOf } from "./lineHeat";

export function lineLimits(point: WorkedPoint, part: WorkedPart, conditions: Conditions): LimitFact[] {
  const line = part.edge.part;
  const wave = waveOf(point, part);
  if (line?.kind !== "line" || wave === null) return [];
  const facts: LimitFact[] = [];
  const limit = decidingLimit(lineVoltageLimits(line.line, conditions.air));
  if (limit) {
    const highest = greatestAlong(wave, (s) => s.voltage);
    const value = Math.sqrt(2 * highest.value);
    const wet = line.condition === "wet" && isPair(line) && limit.kind !== "rating";
    const bears = limit[wet ? "low" : conditions.limits === "value" ? "peak" : conditions.limits];
    facts.push({
      part: part.edge.name,
      of: limit.kind === "glow" ? "glow" : "voltage",
      value,
      limit: bears,
      unit: "V peak",
      happens: limit.kind === "rating" ? `${limit.says} is reached` : limit.says,
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
