import { describe, expect, it } from "vitest";
import { createAntennaSolver } from "../../chain/antennaSolver";
import type { WorkedPoint } from "../../chain/workedPoint";
import { workPoint } from "../../chain/workPoint";
import { chosenKernels } from "../../kernels/chosen";
import { plainStation } from "../../testing/plainStation";
import type { AntennaSolution } from "../../wires/antennaSolution";
import { shortfallSays } from "../../words/limits";
import { feedError, shortfall, strongestGainError } from "./feedError";
import { provenanceOf } from "./provenanceOf";
import { stationNumbers } from "./stationNumbers";

const station = plainStation();
const worked = workPoint(station, station.bands[0]!, 7.1e6, createAntennaSolver(), { tuner: "matched" });
if ("refused" in worked) throw new Error(worked.refused.why);
const point: WorkedPoint = worked;
const result = stationNumbers(point);
const context = { program: "1", catalogue: "2", fileHash: "3" };

const withSolution = (changes: Partial<AntennaSolution>): WorkedPoint => ({
  ...point,
  antenna: { ...point.antenna, solution: { ...point.antenna.solution!, ...changes } },
});
const says = (of: WorkedPoint, name: string): string =>
  provenanceOf(context, { point: of, result }).methods.find((m) => m.name === name)!.says;

describe("where an answer comes from", () => {
  it("names the kernels that worked it out, and those chosen where nothing was solved", () => {
    const { method } = point.antenna.solution!;
    const other = withSolution({ method: { ...method, kernels: "some other" } });
    expect(provenanceOf(context, { point: other, result }).kernels).toBe("some other kernels");
    expect(provenanceOf(context, null).kernels).toBe(`${chosenKernels().name} kernels`);
  });

  it("says which mesh, whether its goal is met, and the errors that are left", () => {
    expect(says(point, "mesh")).toMatch(
      /^elements of at most 1\/56 wavelength; .* is met at every port; .* in doubt by about 0\.\d+ Ω/,
    );
    const { method } = point.antenna.solution!;
    const [first] = point.antenna.build.structure.wires;
    const refinement = { wires: { [first!.name]: 1.4 }, others: 0.8 };
    const finer = withSolution({ goalMet: false, method: { ...method, refinement } });
    expect(says(finer, "mesh")).toMatch(
      /^elements of at most 1\/56 wavelength, refined on 1 of \d+ wires, up to 1\/98; .* is not met/,
    );
  });

  it("says which factorisation, and when the pivoting one took over", () => {
    const { method } = point.antenna.solution!;
    expect(says(point, "equations")).toContain("without pivoting");
    const pivoted = withSolution({ method: { ...method, factorisation: "LU with partial pivoting" } });
    expect(says(pivoted, "equations")).toContain("took over");
  });

  it("says which symmetry was made use of, if any", () => {
    const { method } = point.antenna.solution!;
    const of = (symmetry: number): string => says(withSolution({ method: { ...method, symmetry } }), "equations");
    expect(of(8)).toContain("symmetry of order 8");
    expect(of(1)).not.toContain("symmetry");
  });
});

describe("what could be worked out only roughly", () => {
  const step = (ohms: number): WorkedPoint["antenna"]["extrapolationStep"] => [[{ re: ohms, im: 0 }]];
  const doubtful = (ohms: number, goalMet: boolean): WorkedPoint => {
    const { antenna } = withSolution({ goalMet });
    return { ...point, antenna: { ...antenna, extrapolationStep: step(ohms) } };
  };

  it("is said from the goal on where refining was given up, and in any case from one ohm or two per cent on", () => {
    expect(feedError(doubtful(0.8, false))).toBe(0.8);
    expect(shortfall(doubtful(0.8, false), 0, 0).ohms).toBe(0.8);
    expect(shortfall(doubtful(0.8, true), 0, 0).ohms).toBeNull();
    expect(shortfall(doubtful(30, true), 0, 0).ohms).toBe(30);
    expect(shortfallSays(shortfall(doubtful(0.8, false), 0, 0)).join()).toContain("0.8 Ω");
  });

  it("is said of the gain and of the watts", () => {
    expect(strongestGainError(point, result)).toBeLessThan(0.05);
    expect(shortfallSays(shortfall(point, 0, 0))).toEqual([]);
    expect(shortfallSays(shortfall(point, 0, 0.2)).join()).toContain("0.2 dB");
    expect(shortfallSays(shortfall(point, -0.01, 0)).join()).toContain("1 %");
  });
});
