import { describe, expect, it } from "vitest";
import { readStation } from "./readStation";

const right = `feedpath: 1
station: A garden
frequency: 7.1 MHz
band: 7.0 MHz to 7.2 MHz
transmitter: { power: 100 W, designed for: 50 ohm }
path:
  - { line: RG-213/U, length: 28 m }
  - { balun: 50 ohm to 200 ohm }
antenna:
  dipole: { length: 20 m, height: 12 m, direction: east, wire: 2 mm copper }
ground: medium dry ground
`;

const problemsOf = (text: string) => {
  const read = readStation(text, { fileName: "garden.yaml" });
  return read.problems;
};

/** What stands in the right file, what people write instead, and what is offered. */
const written: readonly (readonly [string, string, string])[] = [
  ["line: RG", "cable: RG", "line"],
  ["line: RG", "coax: RG", "line"],
  ["balun: 50", "unun: 50", "transformer"],
  ["dipole:", "doublet:", "dipole"],
  ["dipole:", "yagi:", "beam"],
  ["RG-213/U", "RG213", "RG-213/U"],
  ["RG-213/U", "ladder line", "450-ohm window line"],
  ["direction: east", "direction: NE", "north-east"],
  ["ground: medium dry ground", "soil: medium dry ground", "ground"],
  ["medium dry ground", "average ground", "medium dry ground"],
  ["medium dry ground", "sand", "very dry ground"],
  ["frequency: 7.1 MHz", "frequency: 7.1", "7.1 MHz"],
  ["100 W", "100", "100 W"],
  ["50 ohm }", "50 }", "50 ohm"],
  ["7.0 MHz to 7.2 MHz", "7.0 - 7.2 MHz", "7.0 MHz to 7.2 MHz"],
  ["50 ohm to 200 ohm", "4:1", "50 ohm to 200 ohm"],
  ["height: 12 m", `height: 39' 4"`, "39 ft 4 in"],
  ["2 mm copper", "14 AWG copper", "1.63 mm copper"],
];

describe("what people say instead of the file's own words", () => {
  it("starts from a file without a problem", () => {
    expect(problemsOf(right)).toEqual([]);
  });

  it.each(written)("%s written as %s is led to %s", (from, to, mend) => {
    const text = right.replace(from, to);
    expect(text).not.toBe(right);
    const [first] = problemsOf(text);
    expect(first?.mend).toBe(mend);
  });

  it("offers no unit where two are usual", () => {
    expect(problemsOf(right.replace("length: 28 m", "length: 28"))[0]?.mend).toBeNull();
  });

  it("says that the soil alone is no return", () => {
    const text = right.replace(/ {2}dipole: .*\n/, "  vertical: { length: 5 m, base: 1 m }\n  against: ground\n");
    expect(problemsOf(text)[0]?.message).toMatch(/^The soil alone \("ground"\) is no return/);
  });
});
