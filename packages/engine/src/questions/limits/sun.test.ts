import { describe, expect, it } from "vitest";
import type { Answer, Refusal } from "../../answer/answer";
import type { CoaxialLine } from "../../lines/lineModel";
import { exactly } from "../../quantity/quantity";
import type { Station } from "../../station/station";
import { sunshine } from "../../stress/surfaceHeat";
import { thermalLine } from "../../stress/thermalLine";
import { antennaOf, levelDipole, linePart, pathOf, plainStation } from "../../testing/plainStation";
import { askedOf, usualConditions } from "./conditions";
import { leavingHeat } from "./lying";
import { limits } from "./run";

const copper = { name: "copper", conductivity: 58e6, permeability: 1 };
const build: CoaxialLine = {
  kind: "coaxial",
  inner: {
    form: "solid",
    layers: [{ metal: copper, outerRadius: 0.45e-3 }],
    holeRadius: 0,
    effectiveRadiusRatio: 1,
    resistanceFactor: 1.2,
  },
  outer: { innerRadius: 1.475e-3, wall: Number.POSITIVE_INFINITY, metal: copper, resistanceFactor: 2 },
  dielectric: { name: "polyethylene", permittivity: 2.26, lossTangent: 3e-4 },
};
const entry = { designation: "thin line", model: build, build, jacketDiameter: 4.95e-3, sources: [] };
const part = linePart("line 1", 20, entry);
const plain = plainStation({ path: pathOf([part]), antennas: [antennaOf(levelDipole(20.1, 12))] });
const station: Station = {
  ...plain,
  transmitter: { ...plain.transmitter, power: exactly(100), duty: exactly(1), onAir: null },
};

function answered(lies: string): Answer {
  const parameters = { lies, transmission: 30, airTemperature: 313.15 };
  const steps = limits.run(station, parameters, { program: "", catalogue: "", fileHash: "" });
  let step = steps.next();
  while (!step.done) step = steps.next();
  const answer: Answer | Refusal = step.value;
  if ("refused" in answer) throw new Error(answer.refused.why);
  return answer;
}

describe("limits of a line in the sun", () => {
  it("begin a transmission with the line as warm as the sun has it", () => {
    const [shade, sun] = ["in air", "in the sun"].map(answered) as [Answer, Answer];
    const first = ({ tables }: Answer) =>
      tables.find(({ name }) => name === "temperatureInTime")!.columns.conductorTemperature!.values[0];
    expect(first(shade)).toBeCloseTo(40, 3);
    expect(first(sun)).toBeGreaterThan(48);
    const power = ({ values }: Answer) => (values.powerAtFirstLimit as { value: number }).value;
    expect(power(sun)).toBeLessThan(0.8 * power(shade));
  });

  it("doubt how well it is cooled, not what the sun brings", () => {
    const usual = usualConditions(askedOf(station, { airTemperature: 313.15 }));
    const thermal = thermalLine(entry, 14e6, 0)!;
    const leaving = (cooling: number) => leavingHeat(part, thermal, "in the sun", { ...usual, cooling });
    expect(leaving(0.8)(313.15)).toBeCloseTo(-sunshine(thermal.surface, 1000), 9);
    const [full, less] = [leaving(1)(353.15), leaving(0.8)(353.15)];
    const sun = sunshine(thermal.surface, 1000);
    expect((less + sun) / (full + sun)).toBeCloseTo(0.8, 9);
  });
});
