/** A built line with its conductors warm or cold. */
import { metalAt, outerConductorAt, roundConductorAt, statedTemperature } from "../conductors/metalTemperature";
import type { BuiltLine, FourWireLine, ShieldedPairLine, TwistedPairLine, WireOverPlaneLine } from "./lineModel";

type Built = BuiltLine | TwistedPairLine | WireOverPlaneLine | FourWireLine | ShieldedPairLine;

/** The line last asked for at a temperature: what is worked out once for a line (fits, fields) is then found again. */
const warmed = new WeakMap<Built, { readonly temperature: number; readonly line: Built }>();

/** The line with every metal at `temperature` (K, 150 to 600); itself at 293.15 K. Dielectric and sizes stay as they are. */
export function lineAtTemperature<Line extends Built>(line: Line, temperature: number): Line {
  if (temperature === statedTemperature) return line;
  const known = warmed.get(line);
  if (known?.temperature === temperature) return known.line as Line;
  const found = { ...line, ...metals(line, temperature) };
  warmed.set(line, { temperature, line: found });
  return found;
}

function metals(line: Built, temperature: number): Partial<Built> {
  if (line.kind === "coaxial") {
    return {
      inner: roundConductorAt(line.inner, temperature),
      outer: outerConductorAt(line.outer, temperature),
    };
  }
  return {
    wire: roundConductorAt(line.wire, temperature),
    ...(line.kind === "wire over plane" && { plane: metalAt(line.plane, temperature) }),
    ...(line.kind === "shielded pair" && { outer: outerConductorAt(line.outer, temperature) }),
  };
}
