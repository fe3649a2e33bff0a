/** What the station is held against: a half-wave dipole on a pole as high, and itself over a perfect plane. */
import { driveSolved } from "../../chain/driveSolved";
import { workPoint } from "../../chain/workPoint";
import { complex } from "../../numerics/complex";
import { speedOfLight } from "../../numerics/vacuum";
import { type DrivenAntenna, driveAntenna } from "../../wires/driveAntenna";
import { solveAntenna } from "../../wires/solveAntenna";
import { isRealSoil, type Point, type Structure } from "../../wires/structure";
import { validateStructure } from "../../wires/validateStructure";
import type { Worked } from "../common/worked";

export interface ReferenceDipole {
  /** m above the soil. */
  readonly height: number;
  readonly driven: DrivenAntenna;
}

/** Length over the wave: near resonance; its gain hardly depends on it. Common practice, no source. */
const lengthInWaves = 0.48;
/** Radius over the wave. */
const thickness = 2e-5;

/** Height of the highest point of the antennas' own wires, m. */
export function topOf(worked: Worked): number {
  const { structure, surroundingWires, outsideWires } = worked.point.antenna.build;
  const own = structure.wires.filter((_, i) => !surroundingWires.has(i) && !outsideWires.has(i));
  return Math.max(...own.flatMap((w) => [w.from[2], w.to[2]]));
}

/** A lossless level half-wave dipole at a height (m) over the station's soil, broadside to an azimuth (rad); or why there is none. */
export function referenceDipole(worked: Worked, height: number, azimuth: number): ReferenceDipole | string {
  const wave = speedOfLight / worked.frequency;
  const { soil } = worked.point.antenna;
  const half = (lengthInWaves * wave) / 2;
  const middle: Point = [0, 0, height];
  const leg = (name: string, side: 1 | -1) => ({
    name,
    from: middle,
    to: [side * half * Math.cos(azimuth), -side * half * Math.sin(azimuth), height] as Point,
    radius: thickness * wave,
    conductivity: Number.POSITIVE_INFINITY,
    permeability: 1,
    insulation: null,
  });
  const structure: Structure = {
    wires: [leg("one leg", 1), leg("other leg", -1)],
    feeds: [{ name: "feed", at: middle, from: [0], into: [1] }],
    loads: [],
  };
  const [problem] = validateStructure(structure, soil, worked.frequency);
  if (problem !== undefined) return problem;
  return { height, driven: driveAntenna(solveAntenna(structure, soil, worked.frequency), [complex(1)]) };
}

/** The same station over a perfectly conducting plane; null where it stands over none, a string where it cannot be worked out. */
export function overPerfectPlane(worked: Worked): DrivenAntenna | string | null {
  if (!isRealSoil(worked.point.antenna.soil)) return null;
  const station = { ...worked.station, ground: { kind: "perfect" } as const };
  const point = workPoint(station, worked.band, worked.frequency, worked.solver, { tuner: "matched" });
  if ("refused" in point) return point.refused.why;
  return driveSolved(point.antenna, point.portVoltages);
}
