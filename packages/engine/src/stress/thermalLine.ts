/** A line's build as a thermal circuit per metre: what heats where, what lies between, and what must warm. */
import { lineConstants } from "../lines/lineConstants";
import type { BuiltLine, LineEntry } from "../lines/lineModel";
import { coaxialCircuit } from "./coaxialCircuit";
import type { ThermalLine } from "./thermalCircuit";
import { wireCircuit } from "./wireCircuit";

export type { ThermalLine } from "./thermalCircuit";

/** The build of a line, where it has one: its own model, or what the catalogue knows of it. */
export const buildOf = (line: LineEntry): BuiltLine | null =>
  line.build ?? (line.model.kind === "data sheet" ? null : line.model);

/**
 * The thermal circuit of a line at `frequency` (Hz); null where its build is not known, and for two wires in one shield. Losses are those of the line's own
 * model at 20 °C with `excess` dB/m over new, shared between the conductors as the build has it.
 */
export function thermalLine(line: LineEntry, frequency: number, excess: number): ThermalLine | null {
  const build = buildOf(line);
  if (build === null) return null;
  const losses = lineConstants(line.model, frequency, { excessDecibelsPerMetre: excess });
  return build.kind === "coaxial"
    ? coaxialCircuit(line, build, losses, frequency)
    : wireCircuit(line, build, losses, frequency);
}
