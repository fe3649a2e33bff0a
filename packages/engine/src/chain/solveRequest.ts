/**
 * One solve of a station's antennas as plain data: a pure function of the request and the chosen kernels, so that it may be
 * done anywhere, ahead of the question that needs it, and gives the same bits.
 */
import type { AntennaBuild } from "../antenna/antennaStructure";
import { chosenKernels } from "../kernels/chosen";
import { layersAt } from "../station/soilAtFrequency";
import type { Station } from "../station/station";
import type { AntennaSolution } from "../wires/antennaSolution";
import { meshRule } from "../wires/grading";
import { type HeldMesh, solveAntenna } from "../wires/solveAntenna";
import type { Soil, Structure } from "../wires/structure";
import { countUnknowns } from "../wires/validateSize";
import { validateStructure } from "../wires/validateStructure";
import type { AntennaRefused } from "./closeAntenna";
import { describeStation } from "./describedStation";
import { heldDown, lifted } from "./lifted";

export type { HeldMesh } from "../wires/solveAntenna";

/** Antennas of a station at a frequency (Hz), all of their wires raised by `lift` metres, on a mesh of its own or a held one. */
export interface SolveRequest {
  readonly station: Station;
  readonly frequency: number;
  readonly lift: number;
  readonly mesh: HeldMesh | undefined;
}

/** What a piece of work says at each step: what will be needed soon (Progress.ahead). */
export interface Ahead {
  readonly ahead?: readonly SolveRequest[];
}

/** A request as questions make most of them: the mesh is the solver's own choice. */
export const requestAt = (station: Station, frequency: number, lift = 0): SolveRequest => ({
  station,
  frequency,
  lift,
  mesh: undefined,
});

/** All that the solution of a request hangs on, as text: requests of the same key have the same solution to the last bit. */
export function requestKey({ station, frequency, lift, mesh }: SolveRequest): string {
  const held = mesh ? `${JSON.stringify(mesh.refinement)} ${mesh.meshFrequency}` : "";
  return `${chosenKernels().name} ${frequency} ${lift} ${held} ${describeStation(station).wires}`;
}

/** Unknown currents the request will have at least, nearly: how much work it is. 0 where it will be refused. */
export function unknownsAsked({ station, frequency, mesh }: SolveRequest): number {
  const { build } = describeStation(station);
  if (build.refused) return 0;
  const rule = meshRule(mesh?.meshFrequency ?? frequency, mesh?.refinement ?? 1);
  return countUnknowns(build.structure, soilOf(station, frequency), rule);
}

export function solveRequest({ station, frequency, lift, mesh }: SolveRequest): AntennaSolution | AntennaRefused {
  const { build } = describeStation(station);
  if (build.refused) return { refused: build.refused };
  const soil = soilOf(station, frequency);
  const held = lift !== 0 && heldDown(build);
  if (held) return { refused: { why: held.why, mend: "`watts` or `band`, which take the station as it hangs" } };
  const structure = structureAt(build, lift);
  const troubles = validateStructure(structure, soil, frequency);
  if (troubles.length > 0)
    return { refused: { why: troubles[0]!, mend: "another shape, height or frequency within that bound" } };
  return solveAntenna(structure, soil, frequency, chosenKernels(), mesh);
}

const structureAt = (build: AntennaBuild, lift: number): Structure =>
  lift === 0 ? build.structure : lifted(build, lift);

/** The soil in numbers at a frequency in Hz. */
export function soilOf({ ground }: Station, frequency: number): Soil {
  if (ground.kind === "free space" || ground.kind === "perfect") return { kind: ground.kind };
  const layers = layersAt(ground, frequency);
  const { thickness: _, ...top } = layers[0]!;
  return layers.length === 1 ? { kind: "homogeneous", ...top } : { kind: "layered", layers };
}
