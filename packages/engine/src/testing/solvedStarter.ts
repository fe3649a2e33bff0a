/** A starter's antenna solved by itself: wires, loads, lines between its feeds, and a small loop's setting. Tests only. */
import { antennaStructure } from "../antenna/antennaStructure";
import { joinedAdmittance } from "../antenna/joinedLines";
import { capacitorImpedance, tuneLoop } from "../antenna/loopTuning";
import { capacitorWire, smallLoop } from "../antenna/shapes/smallLoop";
import { add, type Complex, complex, conjugate, divide, multiply, one, zero } from "../numerics/complex";
import { solveComplexSystem } from "../numerics/solveComplexSystem";
import type { Antenna } from "../station/antennaDescription";
import type { Ground } from "../station/station";
import type { AntennaSolution } from "../wires/antennaSolution";
import { type DrivenAntenna, driveAntenna } from "../wires/driveAntenna";
import { solveAntenna } from "../wires/solveAntenna";
import type { Soil, Structure } from "../wires/structure";
import { validateStructure } from "../wires/validateStructure";
import { plainStation } from "./plainStation";

export const averageSoil: Soil = { kind: "homogeneous", relativePermittivity: 13, conductivity: 5e-3 };
export const freeSpace: Soil = { kind: "free space" };
export const perfectPlane: Soil = { kind: "perfect" };

export interface SolvedStarter {
  readonly structure: Structure;
  readonly solution: AntennaSolution;
  /** Ohm at each feed under the currents that are driven, lines between feeds included. */
  readonly impedances: readonly Complex[];
  readonly driven: DrivenAntenna;
}

/** Structure of one antenna; lines between its feeds are no part of it, a small loop is set at the frequency. */
export function structureOf(antenna: Antenna, soil: Soil, frequency: number): Structure {
  const shape = antenna.shapes[0]!.shape;
  if (shape.kind === "small loop") return loopStructure(shape, soil, frequency);
  const { joined: _, ...alone } = antenna;
  const build = antennaStructure(plainStation({ antennas: [alone], ground: groundOf(soil) }));
  if (build.refused) throw new Error(build.refused.why);
  return build.structure;
}

function groundOf(soil: Soil): Ground {
  if (soil.kind !== "homogeneous") return { kind: soil.kind === "perfect" ? "perfect" : "free space" };
  const exact = (value: number) => ({ value, low: value, high: value, basis: "stated" }) as const;
  return {
    kind: "soil",
    name: "",
    permittivity: exact(soil.relativePermittivity),
    conductivity: exact(soil.conductivity),
  };
}

type Loop = Extract<Antenna["shapes"][number]["shape"], { kind: "small loop" }>;

function loopStructure(shape: Loop, soil: Soil, frequency: number): Structure {
  const { wires, feeds } = smallLoop(shape, [0, 0, 0], "antenna");
  const gap = { name: "capacitor", wire: capacitorWire, distance: 0 };
  const { admittance } = solveAntenna({ wires, feeds, loads: [], gaps: [gap] }, soil, frequency);
  const loop = {
    name: "antenna",
    feed: 0,
    gap: 1,
    capacitor: shape.capacitor,
    jointsResistance: shape.jointsResistance?.value ?? 0,
    lineSide: 50,
  };
  const setting = tuneLoop(loop, admittance, frequency);
  if ("refused" in setting) throw new Error(setting.refused.why);
  const impedance = (w: number) => capacitorImpedance(loop, setting.capacitance, w);
  return { wires, feeds, loads: [{ wire: capacitorWire, distance: 0, impedance }] };
}

/** Drives the feeds with currents (A) by their names; a feed without one is left open. One feed alone gets 1 A. */
export function solveStarter(
  antenna: Antenna,
  soil: Soil,
  frequency: number,
  currents: Readonly<Record<string, Complex>> = {},
): SolvedStarter {
  const structure = structureOf(antenna, soil, frequency);
  const problems = validateStructure(structure, soil, frequency);
  if (problems.length > 0) throw new Error(problems.join("\n"));
  const solution = solveAntenna(structure, soil, frequency);
  const names = structure.feeds.map((f) => f.name);
  const lines = joinedAdmittance(antenna.joined ?? [], names, frequency);
  const into = names.map((name) => currents[name] ?? (names.length === 1 ? one : zero));
  const voltages = (own: readonly (readonly Complex[])[]): Complex[] => {
    const whole = own.map((row, i) => row.map((y, k) => add(y, lines[i]![k]!)));
    const found = solveComplexSystem(whole, into);
    if (!found) throw new Error("no single state");
    return found;
  };
  const best = voltages(solution.admittance);
  return {
    structure,
    solution,
    impedances: names.map((_, i) => (into[i] === zero ? zero : divide(best[i]!, into[i]!))),
    driven: driveAntenna(solution, voltages(solution.fineAdmittance)),
  };
}

export const swrOf = (z: Complex, reference: number): number => {
  const reflected = divide(add(z, complex(-reference)), add(z, complex(reference)));
  const share = Math.sqrt(multiply(reflected, conjugate(reflected)).re);
  return (1 + share) / (1 - share);
};
