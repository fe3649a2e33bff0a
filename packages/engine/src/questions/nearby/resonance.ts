/** Where a thing near by resonates: alone over the soil, the reactance at the place of its largest current is zero there. */

import type { AntennaBuild } from "../../antenna/antennaStructure";
import { antennaStructure } from "../../antenna/antennaStructure";
import { loneConductor } from "../../antenna/loneConductor";
import { soilOf } from "../../chain/antennaSolver";
import { closeAntenna } from "../../chain/closeAntenna";
import { rootBetween, signChanges } from "../../numerics/crossings";
import { invertComplexMatrix } from "../../numerics/invertComplexMatrix";
import type { Station } from "../../station/station";
import { solveAntenna } from "../../wires/solveAntenna";
import { validateStructure } from "../../wires/validateStructure";
import type { Progress } from "../common/question";
import type { Worked } from "../common/worked";
import type { Thing } from "./things";

export interface Resonance {
  /** Hz, nearest to the working frequency; null where none was found between the ends looked at. */
  readonly frequency: number | null;
  /** ohm there, at the place of the largest current. */
  readonly resistance: number | null;
}

/** Looked at from this share to this multiple of the working frequency, in steps of equal ratio. */
const lowest = 0.45;
const highest = 2.2;
const steps = 14;
/** Of the frequency. */
const tolerance = 1e-4;

/** Null: a sheet, or what has no single feed. `at`: m along a conductor. */
export function* studyResonance(worked: Worked, thing: Thing, at: number): Generator<Progress, Resonance | null> {
  const { station, frequency } = worked;
  const build = loneBuild(station, thing, at);
  if (!build || build.refused || build.structure.feeds.length !== 1 || build.loops.length > 0) return null;
  const impedance = impedanceOf(station, build);
  const reactance = (f: number): number => impedance(f)?.im ?? Number.NaN;
  const scanned: { f: number; x: number }[] = [];
  for (let i = 0; i < steps; i++) {
    yield { done: i, of: steps, what: `frequencies of ${thing.name}` };
    const f = frequency * lowest * (highest / lowest) ** (i / (steps - 1));
    scanned.push({ f, x: reactance(f) });
  }
  // Rising reactance: there the current is largest. Where it falls through zero the two halves hold each other back.
  const rising = signChanges(scanned.map((s) => s.x)).filter((i) => scanned[i]!.x < scanned[i + 1]!.x);
  const crossing = (i: number): number => {
    const [a, b] = [scanned[i]!, scanned[i + 1]!];
    return a.f + ((b.f - a.f) * a.x) / (a.x - b.x);
  };
  const nearness = (i: number): number => Math.abs(Math.log(crossing(i) / frequency));
  const [nearest] = rising.sort((a, b) => nearness(a) - nearness(b));
  if (nearest === undefined) return { frequency: null, resistance: null };
  const found = rootBetween(reactance, scanned[nearest]!.f, scanned[nearest + 1]!.f, tolerance * frequency);
  return { frequency: found, resistance: impedance(found)?.re ?? null };
}

/** An antenna alone at its own feed, without its line: as if shorted there when it is at its resonance. */
function loneBuild(station: Station, thing: Thing, at: number): AntennaBuild | null {
  if (thing.kind === "sheet") return null;
  if (thing.kind === "conductor") return loneConductor(station, thing.name, at);
  const antenna = station.antennas.find((a) => a.name === thing.name)!;
  const surroundings = station.surroundings.filter((s) => s.kind === "conductor" && s.name === antenna.against);
  const path = { parts: [], end: { kind: "feed", feed: antenna.feeds[0]?.name ?? antenna.name } } as const;
  return antennaStructure({ ...station, antennas: [antenna], surroundings, path });
}

function impedanceOf(station: Station, build: AntennaBuild) {
  return (frequency: number) => {
    const soil = soilOf(station, frequency);
    if (validateStructure(build.structure, soil, frequency).length > 0) return null;
    const solution = solveAntenna(build.structure, soil, frequency, undefined, { refinement: 1 });
    const closed = closeAntenna(build, { ...solution, solution });
    return "refused" in closed ? null : (invertComplexMatrix(closed.admittance)?.[0]?.[0] ?? null);
  };
}
