/** Solves the station's antennas at a frequency and remembers what it solved: a change of the line never solves again. */
import type { LoopSetting } from "../antenna/loopTuning";
import type { Station } from "../station/station";
import type { AntennaSolution } from "../wires/antennaSolution";
import { type AntennaRefused, closeAntenna, type SolvedAntenna } from "./closeAntenna";
import { type DescribedBuild, describeStation } from "./describedStation";
import { loopSettings, settingFrequency } from "./loopSettings";
import { createSolutionMemory, type SolutionMemory } from "./solutionMemory";
import { type HeldMesh, requestKey, type SolveRequest, solveRequest } from "./solveRequest";

export type { AntennaRefused, SolvedAntenna } from "./closeAntenna";
export type { DescribedBuild } from "./describedStation";
export { type HeldMesh, soilOf } from "./solveRequest";

export interface AntennaSolver {
  /** Antennas of a station at a frequency (Hz), all of their wires raised by `lift` metres, on a mesh of its own or a held one. */
  readonly solve: (
    station: Station,
    frequency: number,
    lift?: number,
    mesh?: HeldMesh,
  ) => SolvedAntenna | AntennaRefused;
  /** How often this solver found nothing kept and solved. */
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

/** `memory` holds what is solved; the host's own outlives the question. */
export function createAntennaSolver(memory: SolutionMemory = createSolutionMemory()): AntennaSolver {
  let solves = 0;
  const solved = (request: SolveRequest): AntennaSolution | AntennaRefused => {
    const key = requestKey(request);
    const known = memory.get(key);
    if (known) return known;
    const solution = solveRequest(request);
    solves += 1;
    memory.set(key, solution);
    return solution;
  };
  const settings: AntennaSolver["settings"] = (station, frequency, lift = 0, mesh) => {
    const { build } = describeStation(station);
    if (build.loops.length === 0) return [];
    const solution = solved({ station, frequency: settingFrequency(station, frequency), lift, mesh });
    return "refused" in solution ? solution : loopSettings(build, { ...solution, solution });
  };
  return {
    solves: () => solves,
    describe: describeStation,
    settings,
    solve(station, frequency, lift = 0, mesh) {
      const solution = solved({ station, frequency, lift, mesh });
      const set = settings(station, frequency, lift, mesh);
      if ("refused" in solution) return solution;
      return "refused" in set ? set : closeAntenna(describeStation(station).build, { ...solution, solution }, set);
    },
  };
}
