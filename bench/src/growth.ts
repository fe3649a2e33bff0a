/** `npm run growth`: what an antenna costs against its unknowns, its wires and the directions asked for. */
import {
  driveAntenna,
  farField,
  type Point,
  type Soil,
  type Structure,
  solveAntenna,
  type Wire,
} from "@feedpath/engine";

const print = (text: string): void => {
  process.stdout.write(`${text}\n`);
};
const soil: Soil = { kind: "homogeneous", relativePermittivity: 13, conductivity: 0.005 };

const wire = (from: Point, to: Point): Wire => ({
  name: `${from} to ${to}`,
  from,
  to,
  radius: 1e-3,
  conductivity: 58e6,
  permeability: 1,
  insulation: null,
});

/** A mast over level radials; with more of them more wires, on a finer mesh more unknowns. */
function mast(radials: number): Structure {
  const foot: Point = [0, 0, 3];
  const ends = Array.from({ length: radials }, (_, i): Point => {
    const azimuth = (2 * Math.PI * i) / radials;
    return [9 * Math.cos(azimuth), 9 * Math.sin(azimuth), 3];
  });
  return {
    wires: [wire(foot, [0, 0, 13]), ...ends.map((end) => wire(foot, end))],
    feeds: [{ name: "feed", at: foot, from: ends.map((_, i) => i + 1), into: [0] }],
    loads: [],
  };
}

/** Least processor time of some runs, ms: what else the machine does counts little. Each run is on a structure of its own. */
function fastest(runs: number, work: () => void): number {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < runs; i++) {
    const start = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(start);
    best = Math.min(best, (user + system) / 1000);
  }
  return best;
}

function solves(title: string, cases: readonly (readonly [radials: number, refinement: number])[], ground: Soil): void {
  print(
    `\n${title}\n\n| wires | unknowns | ms | power of the unknowns since the line above |\n| --- | --- | --- | --- |`,
  );
  let before: { readonly unknowns: number; readonly time: number } | null = null;
  for (const [radials, refinement] of cases) {
    let unknowns = 0;
    const time = fastest(3, () => {
      unknowns = solveAntenna(mast(radials), ground, 7.1e6, undefined, { refinement }).unknowns;
    });
    const power = before ? Math.log(time / before.time) / Math.log(unknowns / before.unknowns) : Number.NaN;
    print(`| ${radials + 1} | ${unknowns} | ${time.toPrecision(3)} | ${before ? power.toFixed(1) : ""} |`);
    before = { unknowns, time };
  }
}

function directions(): void {
  print("\nDirections of the far field, 17 wires over soil\n\n| directions | ms | µs each |\n| --- | --- | --- |");
  const driven = driveAntenna(solveAntenna(mast(16), soil, 7.1e6), [{ re: 1, im: 0 }]);
  for (const count of [100, 1000, 10_000]) {
    const time = fastest(4, () => {
      for (let i = 0; i < count; i++) farField(driven, (i / count) * 1.5, i * 0.1);
    });
    print(`| ${count} | ${time.toPrecision(3)} | ${((1000 * time) / count).toPrecision(3)} |`);
  }
}

solves(
  "Against unknowns: 9 wires in free space, finer meshes",
  [
    [8, 1],
    [8, 2],
    [8, 4],
    [8, 6],
  ],
  { kind: "free space" },
);
solves(
  "Against wires: in free space, one mesh",
  [
    [4, 1],
    [8, 1],
    [16, 1],
    [32, 1],
    [50, 1],
  ],
  { kind: "free space" },
);
solves(
  "Against wires: over soil",
  [
    [4, 1],
    [8, 1],
    [16, 1],
    [32, 1],
    [50, 1],
  ],
  soil,
);
directions();
