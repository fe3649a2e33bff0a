/** Solves the station's antennas at a frequency and remembers what it solved: a change of the line never solves again. */
import type { AntennaBuild } from "../antenna/antennaStructure";
import { antennaStructure } from "../antenna/antennaStructure";
import { referenceKernels } from "../kernels/reference/referenceKernels";
import { type Complex, subtract } from "../numerics/complex";
import { invertComplexMatrix } from "../numerics/invertComplexMatrix";
import type { Station } from "../station/station";
import { type AntennaSolution, type SolveOptions, solveAntenna } from "../wires/solveAntenna";
import type { Soil, Structure } from "../wires/structure";
import { validateStructure } from "../wires/validateStructure";
import { type Closing, closePorts } from "./closePorts";

export interface SolvedAntenna {
  readonly build: AntennaBuild;
  readonly soil: Soil;
  /** Feed names, and the admittance between them in siemens with all other ports closed. */
  readonly feeds: readonly string[];
  readonly admittance: readonly (readonly Complex[])[];
  /** Volts at all ports of the solution for 1 V at each feed in turn. */
  readonly portVoltages: readonly (readonly Complex[])[];
  /** Ohm: step by which the extrapolation moved the impedances between the feeds; null where it cannot be told. */
  readonly extrapolationStep: readonly (readonly Complex[])[] | null;
  /** Null where the admittance was interpolated between solved frequencies: no currents, no fields. */
  readonly solution: AntennaSolution | null;
}

export interface AntennaRefused {
  readonly refused: { readonly why: string; readonly mend: string };
}

export interface AntennaSolver {
  /** Antennas of a station at a frequency (Hz), all of their wires raised by `lift` metres, on a mesh of its own or a held one. */
  readonly solve: (
    station: Station,
    frequency: number,
    lift?: number,
    mesh?: HeldMesh,
  ) => SolvedAntenna | AntennaRefused;
  readonly solves: () => number;
}

/** A mesh held over a sweep. */
export type HeldMesh = Required<SolveOptions>;

/** Solutions kept; a solution of 100 unknowns holds about 200 kB. */
const mostKept = 200;

export function createAntennaSolver(): AntennaSolver {
  const kept = new Map<string, SolvedAntenna | AntennaRefused>();
  const builds = new Map<string, AntennaBuild>();
  let solves = 0;
  return {
    solves: () => solves,
    solve(station, frequency, lift = 0, mesh) {
      const described = JSON.stringify([station.antennas, station.surroundings, station.earths, station.ground]);
      const held = mesh ? `${mesh.refinement} ${mesh.meshFrequency}` : "";
      const key = `${frequency} ${lift} ${held} ${described}`;
      const known = kept.get(key);
      if (known) return known;
      const build = builds.get(described) ?? antennaStructure(station);
      remember(builds, described, build);
      const solved = solveBuild(station, build, { frequency, lift, mesh });
      solves += 1;
      remember(kept, key, solved);
      return solved;
    },
  };
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

function solveBuild(station: Station, build: AntennaBuild, asked: Asked): SolvedAntenna | AntennaRefused {
  const { frequency, lift, mesh } = asked;
  if (build.refused) return { refused: build.refused };
  const soil = soilOf(station);
  if (soil === null) {
    return {
      refused: { why: "not computed yet: soil in layers", mend: "one soil with a permittivity and a conductivity" },
    };
  }
  if (lift !== 0 && hangsOnSurroundings(build)) {
    return {
      refused: {
        why: "the antenna works against a conductor of the surroundings: it cannot be raised or lowered without it",
        mend: "`watts` or `band`, which take the station as it hangs",
      },
    };
  }
  const structure = lift === 0 ? build.structure : lifted(build, lift);
  const troubles = validateStructure(structure, soil, frequency);
  if (troubles.length > 0)
    return { refused: { why: troubles[0]!, mend: "another shape, height or frequency within that bound" } };
  return closed(build, soil, solveAntenna(structure, soil, frequency, referenceKernels, mesh));
}

/** The solution seen at its feeds, gaps and contacts closed as the station says. */
function closed(build: AntennaBuild, soil: Soil, solution: AntennaSolution): SolvedAntenna | AntennaRefused {
  const closings = closingsOf(build, solution);
  const best = closePorts(solution.admittance, closings);
  const fine = closePorts(solution.fineAdmittance, closings);
  if (!best || !fine)
    return {
      refused: {
        why: "the outside of the line and its earths have no single state here",
        mend: "another choke, bond or route",
      },
    };
  const zBest = invertComplexMatrix(best.admittance);
  const zFine = invertComplexMatrix(fine.admittance);
  return {
    build,
    soil,
    feeds: build.structure.feeds.map((f) => f.name),
    admittance: best.admittance,
    portVoltages: fine.voltages,
    extrapolationStep: zBest && zFine && zBest.map((row, i) => row.map((z, k) => subtract(z, zFine[i]![k]!))),
    solution,
  };
}

/** A contact's electrode is in the solution already: what is added is the earth's impedance less the electrode's own. */
function closingsOf(build: AntennaBuild, solution: AntennaSolution): Closing[] {
  const firstContact = build.structure.gaps?.length ?? 0;
  return build.closings.map((closing, i) => {
    const impedance = closing.impedance(2 * Math.PI * solution.frequency);
    const electrode = solution.electrodes[i - firstContact];
    return impedance === "open" || !electrode ? impedance : subtract(impedance, electrode);
  });
}

function soilOf(station: Station): Soil | null {
  const ground = station.ground;
  if (ground.kind === "layers") return null;
  if (ground.kind !== "soil") return { kind: ground.kind };
  return {
    kind: "homogeneous",
    relativePermittivity: ground.permittivity.value,
    conductivity: ground.conductivity.value,
  };
}

const hangsOnSurroundings = (build: AntennaBuild): boolean =>
  build.structure.feeds.some((f) => [...f.from, ...f.into].some((w) => build.surroundingWires.has(w)));

/** Antenna wires and feeds raised; conductors near by stay where they are. */
function lifted(build: AntennaBuild, lift: number): Structure {
  const { wires, feeds, loads } = build.structure;
  const up = (p: readonly [number, number, number]): [number, number, number] => [p[0], p[1], p[2] + lift];
  return {
    loads,
    wires: wires.map((w, i) => (build.surroundingWires.has(i) ? w : { ...w, from: up(w.from), to: up(w.to) })),
    feeds: feeds.map((f) => ({ ...f, at: up(f.at) })),
  };
}
