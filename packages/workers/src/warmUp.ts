/** Work whose result nobody wants, so that the code of a solve is compiled before it is needed. */
import { type Point, type Structure, solveAntenna } from "@feedpath/engine";

const soil = { kind: "homogeneous", relativePermittivity: 13, conductivity: 5e-3 } as const;

/** m; other heights are other tables and other look-ups, on the same mesh. */
const heights = [5, 8, 11];

export function warmUp(): void {
  for (const height of heights) solveAntenna(dipole(height), soil, 10e6);
}

function dipole(height: number): Structure {
  const middle: Point = [0, 0, height];
  const leg = (name: string, x: number) => ({
    ...{ name, from: middle, to: [x, 0, height - 1] as Point, radius: 1e-3 },
    ...{ conductivity: 58e6, permeability: 1, insulation: null },
  });
  return {
    wires: [leg("west", -7), leg("east", 7)],
    feeds: [{ name: "feed", at: middle, from: [0], into: [1] }],
    loads: [],
  };
}
