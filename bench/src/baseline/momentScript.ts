/** The direct numpy and scipy script of the same method, and whether it says the same as the engine. */
import type { AntennaSolution } from "@feedpath/engine";
import { frequency, soil } from "../antennas";
import { type PythonProgram, startPython } from "./python";

export interface ScriptResult {
  /** Ohm. */
  readonly re: number;
  readonly im: number;
  /** Linear. */
  readonly gain: number;
  /** Kernels over soil, matrix, solve, greatest gain. */
  readonly seconds: readonly [number, number, number, number];
}

export interface MomentScript {
  readonly versions: string;
  readonly run: () => Promise<ScriptResult>;
  readonly end: () => void;
}

/** The nodes of the engine's own mesh of a level dipole along y, so that both solve the same equations. */
function problemOf({ model }: AntennaSolution): string {
  if (soil.kind !== "homogeneous") throw new Error(`the script knows homogeneous soil only, not ${soil.kind}`);
  const { elements, firstElement } = model.mesh;
  const ends = [...elements.start.filter((_, i) => i % 3 === 1), model.structure.wires.at(-1)!.to[1]];
  return JSON.stringify({
    nodes: ends,
    feed: firstElement[1],
    height: model.structure.wires[0]!.from[2],
    radius: model.structure.wires[0]!.radius,
    conductivity: model.structure.wires[0]!.conductivity,
    frequency,
    permittivity: soil.relativePermittivity,
    soilConductivity: soil.conductivity,
  });
}

export async function startMomentScript(solution: AntennaSolution): Promise<MomentScript | null> {
  const python: PythonProgram | null = await startPython("momentScript.py");
  if (!python) return null;
  const problem = problemOf(solution);
  return {
    versions: python.versions,
    run: async () => JSON.parse(await python.ask(problem)),
    end: python.end,
  };
}

/** Ohm between the engine on its fine mesh alone and the script on the same mesh, and dB between their gains. */
export function disagreement(solution: AntennaSolution, gain: number, script: ScriptResult) {
  const { re, im } = solution.fineAdmittance[0]![0]!;
  const size = re * re + im * im;
  return {
    ohm: Math.hypot(re / size - script.re, -im / size - script.im),
    decibels: Math.abs(10 * Math.log10(gain / script.gain)),
  };
}
