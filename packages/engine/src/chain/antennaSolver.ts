/** Solves the station's antennas at a frequency and remembers what it solved: a change of the line never solves again. */
import type { AntennaBuild } from "../antenna/antennaStructure";
import { antennaStructure } from "../antenna/antennaStructure";
import type { LoopSetting } from "../antenna/loopTuning";
import { chosenKernels } from "../kernels/chosen";
import { layersAt } from "../station/soilAtFrequency";
import type { Station } from "../station/station";
import type { AntennaSolution } from "../wires/antennaSolution";
import { type SolveOptions, solveAntenna } from "../wires/solveAntenna";
import type { Soil } from "../wires/structure";
import { validateStructure } from "../wires/validateStructure";
import { type AntennaRefused, closeAntenna, type SolvedAntenna } from "./closeAntenna";
import { heldDown, lifted } from "./lifted";
import { loopSettings, settingFrequency } from "./loopSettings";

export type { AntennaRefused, SolvedAntenna } from "./closeAntenna";

export interface AntennaSolver {
  /** Antennas of a station at a frequency (Hz), all of their wires raised by `lift` metres, on a mesh of its own or a held one. */
  readonly solve: (
    station: Station,
    frequency: number,
    lift?: number,
    mesh?: HeldMesh,
  ) => SolvedAntenna | AntennaRefused;
  readonly solves: () => number;
  /** The structure of a station's antennas, from what is kept when the same station comes again. */
  readonly describe: (station: Station) => DescribedBuild;
  /** How the small loops of a station are set for work at a frequency (Hz). */
  readonly settings: (
    station: Station,
    frequency: number,
    lift?: number,
    mesh?: HeldMesh,
  ) => readonly LoopSetting[] | AntennaRefused;
}

/** A mesh held over a sweep. */
export type HeldMesh = Required<SolveOptions>;

/** Solutions kept; a solution of 100 unknowns holds about 200 kB. */
const mostKept = 200;

export function createAntennaSolver(): AntennaSolver {
  const solutions = new Map<string, AntennaSolution | AntennaRefused>();
  const builds = new Map<string, DescribedBuild>();
  let solves = 0;
  const describe = (station: Station): DescribedBuild => {
    const described = JSON.stringify([
      ...[station.antennas, station.surroundings, station.earths, station.ground],
      ...[station.path, station.transmitter.earthed],
    ]);
    const known = builds.get(described) ?? describedBuild(station);
    remember(builds, described, known);
    return known;
  };
  const solved = (station: Station, asked: Asked): AntennaSolution | AntennaRefused => {
    const { build, wires } = describe(station);
    const { frequency, lift, mesh } = asked;
    const held = mesh ? `${mesh.refinement} ${mesh.meshFrequency}` : "";
    const key = `${frequency} ${lift} ${held} ${wires}`;
    const known = solutions.get(key);
    const solution = known ?? solveBuild(station, build, asked);
    if (!known) solves += 1;
    remember(solutions, key, solution);
    return solution;
  };
  const settings: AntennaSolver["settings"] = (station, frequency, lift = 0, mesh) => {
    const { build } = describe(station);
    if (build.loops.length === 0) return [];
    const solution = solved(station, { frequency: settingFrequency(station, frequency), lift, mesh });
    return "refused" in solution ? solution : loopSettings(build, { ...solution, solution });
  };
  return {
    solves: () => solves,
    describe,
    settings,
    solve(station, frequency, lift = 0, mesh) {
      const solution = solved(station, { frequency, lift, mesh });
      const set = settings(station, frequency, lift, mesh);
      if ("refused" in solution) return solution;
      return "refused" in set ? set : closeAntenna(describe(station).build, { ...solution, solution }, set);
    },
  };
}

export interface DescribedBuild {
  readonly build: AntennaBuild;
  /** All that the solution of the wires hangs on: chokes and the resistance of earths are no part of it. */
  readonly wires: string;
}

function describedBuild(station: Station): DescribedBuild {
  const build = antennaStructure(station);
  const loads = station.antennas.map((a) => [a.loads, a.shapes]);
  return { build, wires: JSON.stringify([build.structure, build.refused, loads, station.ground]) };
}

function remember<T>(kept: Map<string, T>, key: string, value: T): void {
  const oldest = kept.keys().next().value;
  if (kept.size >= mostKept && oldest !== undefined && !kept.has(key)) kept.delete(oldest);
  kept.set(key, value);
}

interface Asked {
  readonly frequency: number;
  readonly lift: number;
  readonly mesh: HeldMesh | undefined;
}

function solveBuild(station: Station, build: AntennaBuild, asked: Asked): AntennaSolution | AntennaRefused {
  const { frequency, lift, mesh } = asked;
  if (build.refused) return { refused: build.refused };
  const soil = soilOf(station, frequency);
  const held = lift !== 0 && heldDown(build);
  if (held) return { refused: { why: held.why, mend: "`watts` or `band`, which take the station as it hangs" } };
  const structure = lift === 0 ? build.structure : lifted(build, lift);
  const troubles = validateStructure(structure, soil, frequency);
  if (troubles.length > 0)
    return { refused: { why: troubles[0]!, mend: "another shape, height or frequency within that bound" } };
  return solveAntenna(structure, soil, frequency, chosenKernels(), mesh);
}

/** The soil in numbers at a frequency in Hz. */
export function soilOf({ ground }: Station, frequency: number): Soil {
  if (ground.kind === "free space" || ground.kind === "perfect") return { kind: ground.kind };
  const layers = layersAt(ground, frequency);
  const { thickness: _, ...top } = layers[0]!;
  return layers.length === 1 ? { kind: "homogeneous", ...top } : { kind: "layered", layers };
}
