import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readTouchstone } from "./readTouchstone";

/** Bodies written after the rules of the Touchstone specification rev 1.1; values computed apart from this program. */
const good: readonly (readonly [string, number, readonly number[], readonly (readonly number[])[]])[] = [
  ["#\n1.0 0.5 90\n", 50, [1e9], [[0, 0.5]]],
  [
    "! home sweep\n# R 75 ri s MHZ\n14.1 0.2 -0.1 ! middle\n14.2 0 0\n",
    75,
    [14.1e6, 14.2e6],
    [
      [0.2, -0.1],
      [0, 0],
    ],
  ],
  [
    "# kHz S DB R 50\n7000 -6.020599913279624 180\n7100 -20 -450\n",
    50,
    [7e6, 7.1e6],
    [
      [-0.5, 0],
      [0, -0.1],
    ],
  ],
  ["# MHz S RI R 50\n# Hz Z MA R 1\n3.6 0.25 0\n", 50, [3.6e6], [[0.25, 0]]],
  ["# Hz Z RI R 50\n1000000 1.5 0.5\n", 50, [1e6], [[0.230769230769, 0.153846153846]]],
  // y = 2 - j1 on 100 ohm is 40 + j20 ohm: (40 + j20 - 100)/(40 + j20 + 100) = -0.4 + j0.2.
  ["# MHz Y RI R 100\n10 2 -1\n", 100, [10e6], [[-0.4, 0.2]]],
  ["# MHz S RI R 50\n10 0.1 0 0.9 0 0.8 0 0.2 0\n", 50, [10e6], [[0.1, 0, 0.8, 0, 0.9, 0, 0.2, 0]]],
  ["! Windows line ends and a tab\r\n#\tMHz\tS\tMA\tR\t50\r\n28.5\t1\t-180\r\n", 50, [28.5e6], [[-1, 0]]],
  ["# HZ S RI R 5.0e1\n1.41E+07 -1.0e-1 +2.5E-1\n", 50, [14.1e6], [[-0.1, 0.25]]],
  ["# MHz S RI R 50\n50 1.05 0\n", 50, [50e6], [[1.05, 0]]],
];

const bad: readonly (readonly [string, RegExp, number])[] = [
  ["# MHz S RI R 50\n14.2 0 0\n14.1 0 0\n", /must increase/, 3],
  ["# MHz S RI R 50\n14.2 0 0 0\n", /4 numbers/, 2],
  ["# MHz S XY R 50\n14.2 0 0\n", /"XY" is no option/, 1],
  ["# MHz S RI R\n14.2 0 0\n", /without its resistance/, 1],
  ["# MHz S RI R -50\n14.2 0 0\n", /greater than zero/, 1],
  ["# MHz S RI R 0.01 50\n14.2 0 0\n", /for each port/, 1],
  ["14.2 0 0\n# MHz S RI R 50\n", /before the option line/, 1],
  ["# MHz S RI R 50\n14.2 NaN 0\n", /"NaN" is not a number/, 2],
  ["# MHz H RI R 50\n14.2 0 0\n", /H parameters are not read/, 1],
  ["# GHz S MA R 50\n1 0.1 0 2 0 0.05 0 0.1 0\n3 0.1 0 2 0 0.05 0 0.1 0\n2 1.2 0.3 45 0.4\n", /Noise data/, 4],
  ["[Version] 2.0\n# MHz S RI R 50\n", /version 2/, 1],
  ["! nothing\n", /no data/, 1],
];

describe("a Touchstone file", () => {
  it.each(good)("%j", (body, reference, frequencies, scattering) => {
    const { network, problems } = readTouchstone(body, "x.s1p");
    expect(problems).toEqual([]);
    expect(network?.reference).toBe(reference);
    frequencies.forEach((frequency, index) => {
      expect(network?.frequencies[index]).toBeCloseTo(frequency, 3);
    });
    scattering.flat().forEach((value, index) => {
      expect(network?.scattering.flat()[index]).toBeCloseTo(value, 9);
    });
  });

  it("turns two-port Z and Y of a series 50 ohm resistor into the same scattering", () => {
    // Series R = Z0 between two ports: S11 = 1/3, S21 = 2/3; y = [[1, -1], [-1, 1]] normalised.
    const series = readTouchstone("# MHz Y RI R 50\n10 1 0 -1 0 -1 0 1 0\n", "x.s2p").network;
    [1 / 3, 0, 2 / 3, 0, 2 / 3, 0, 1 / 3, 0].forEach((value, index) => {
      expect(series?.scattering[0]?.[index]).toBeCloseTo(value, 12);
    });
    // Shunt R = Z0: z = [[1, 1], [1, 1]] normalised; S11 = -1/3, S21 = 2/3.
    const shunt = readTouchstone("# MHz Z RI R 50\n10 1 0 1 0 1 0 1 0\n", "x.s2p").network;
    [-1 / 3, 0, 2 / 3, 0, 2 / 3, 0, -1 / 3, 0].forEach((value, index) => {
      expect(shunt?.scattering[0]?.[index]).toBeCloseTo(value, 12);
    });
  });

  it.each(bad)("refuses %j", (body, message, line) => {
    const { network, problems } = readTouchstone(body, "x.s1p");
    expect(network).toBeNull();
    expect(problems[0]?.message).toMatch(message);
    expect(problems[0]?.line).toBe(line);
  });

  it("never throws and never mixes a network with problems", () => {
    const line = fc.oneof(
      fc.string(),
      fc.constantFrom("# MHz S RI R 50", "14.2 0 0", "14.3 0.1 0.1", "1 2 3 4 5 6 7 8 9"),
    );
    fc.assert(
      fc.property(fc.array(line, { maxLength: 8 }), (lines) => {
        const { network, problems } = readTouchstone(lines.join("\n"), "x.s1p");
        expect(network === null).toBe(problems.length > 0);
      }),
      { numRuns: 300 },
    );
  });
});
