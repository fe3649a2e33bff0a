/** One point, a height study and a sweep of a dipole over soil, through the engine's public door. */
import {
  driveAntenna,
  exactly,
  findQuestion,
  isQuantity,
  type Soil,
  type Station,
  type Structure,
  solveAntenna,
  strongestDirection,
} from "@feedpath/engine";
import { readStation } from "@feedpath/station-file";
import type { Case } from "./interleaved";

const soil: Soil = { kind: "homogeneous", relativePermittivity: 13, conductivity: 0.005 };

/** A level dipole of 20.1 m, 2 mm thick, for 7.1 MHz: with this refinement about 90 unknowns. */
const refinement = 1.6;

function dipole(height: number): Structure {
  const wire = (from: number, to: number) => ({
    name: "leg",
    from: [0, from, height] as const,
    to: [0, to, height] as const,
    radius: 1e-3,
    conductivity: 58e6,
    permeability: 1,
    insulation: null,
  });
  return {
    wires: [wire(-10.05, 0), wire(0, 10.05)],
    feeds: [{ name: "feed", at: [0, 0, height], from: [0], into: [1] }],
    loads: [],
  };
}

/** Impedance and greatest gain at one height and frequency. */
export function point(height: number, frequency: number): { readonly unknowns: number; readonly gain: number } {
  const solution = solveAntenna(dipole(height), soil, frequency, undefined, { refinement });
  const { gain } = strongestDirection(driveAntenna(solution, [{ re: 1, im: 0 }]));
  return { unknowns: solution.unknowns, gain };
}

/** The harbour station without uncertainty, so that a study is one curve. */
export function plainStation(text: string): Station {
  const { station, problems } = readStation(text, { fileName: "harbour-school-club.yaml" });
  if (!station) throw new Error(problems.map((p) => p.message).join("\n"));
  const nominal = (thing: unknown): unknown => {
    if (isQuantity(thing)) return exactly(thing.value, thing.basis);
    if (Array.isArray(thing)) return thing.map(nominal);
    if (typeof thing !== "object" || thing === null) return thing;
    return Object.fromEntries(Object.entries(thing).map(([key, value]) => [key, nominal(value)]));
  };
  return nominal(station) as Station;
}

export function askPlainly(station: Station, id: string): void {
  const question = findQuestion(id);
  if (!question) throw new Error(`no question "${id}"`);
  const run = question.run(station, {}, { program: "bench", catalogue: "bench", fileHash: "" });
  while (!run.next().done);
}

const timed = (name: string, work: () => void): Case => ({
  name,
  run: () => {
    work();
    return null;
  },
});

export const antennaCases = (station: Station): readonly Case[] => [
  timed("one height point with greatest gain", () => point(12, 7.1e6)),
  timed("25 heights, one after another", () => {
    for (let i = 0; i < 25; i++) point(2 + i, 7.1e6);
  }),
  timed("question `height`, 25 heights, whole answer", () => askPlainly(station, "height")),
  timed("question `band`, 101 frequencies, whole answer", () => askPlainly(station, "band")),
];
