import { describe, expect, it } from "vitest";
import { parseConductor } from "./conductor";
import type { DimensionName } from "./dimensions";
import { parsePair, parseQuantity, parseSpan } from "./parseQuantity";
import { parseDirection, parsePlace } from "./place";

function value(text: string, dimension: DimensionName) {
  const read = parseQuantity(text, dimension);
  if (!read.ok) throw new Error(read.fault.message);
  return read.value;
}

function message(text: string, dimension: DimensionName): string {
  const read = parseQuantity(text, dimension);
  return read.ok ? "accepted" : read.fault.message;
}

describe("a quantity", () => {
  it.each([
    ["28 m", "length", 28],
    ["28m", "length", 28],
    ["40 ft 6 in", "length", 12.3444],
    ["3 kohm", "impedance", 3000],
    ["3 kΩ", "impedance", 3000],
    ["3 k\u2126", "impedance", 3000],
    ["5 mS/m", "conductivity", 0.005],
    ["3.2 uH", "inductance", 3.2e-6],
    ["3.2 \u00b5H", "inductance", 3.2e-6],
    ["3.2 \u03bcH", "inductance", 3.2e-6],
    ["9 dB/100 m", "lossPerLength", 0.09],
    ["9 dB/100m", "lossPerLength", 0.09],
    ["40 %", "ratio", 0.4],
    ["0.66", "ratio", 0.66],
    ["13", "number", 13],
    ["20 degC", "temperature", 293.15],
    ["20 \u00b0C", "temperature", 293.15],
    ["68 degF", "temperature", 293.15],
    ["3e-6 H", "inductance", 3e-6],
  ] as const)("%s is read as a %s", (text, dimension, expected) => {
    expect(value(text, dimension).value).toBeCloseTo(expected, 12);
  });

  it("knows how well it is known", () => {
    expect(value("12 m \u00b1 0.5 m", "length")).toEqual({ value: 12, low: 11.5, high: 12.5, basis: "stated" });
    expect(value("12 m +/- 0.5 m", "length")).toEqual(value("12 m +- 0.5 m", "length"));
    expect(value("200 pF \u00b1 5 %", "capacitance").low).toBeCloseTo(190e-12, 20);
    expect(value("20 degC \u00b1 5 degC", "temperature").low).toBeCloseTo(288.15, 9);
    // A bound is a difference: it may be smaller than the smallest value that is read.
    expect(value("7 MHz +/- 2 Hz", "frequency").high).toBe(7000002);
    expect(value("between 1 kohm and 2 kohm", "impedance").value).toBe(1500);
    // More than threefold apart: the geometric middle (grammar, table of values).
    expect(value("between 1 kohm and 4 kohm", "impedance").value).toBe(2000);
  });

  it("says what is wrong and how to mend it", () => {
    expect(message("5", "conductivity")).toBe("Conductivity needs a unit: mS/m or S/m.");
    expect(message("7,1 MHz", "frequency")).toBe('"7,1 MHz" has a decimal comma. Write the point: 7.1 MHz.');
    expect(message("7.1 mhz", "frequency")).toBe('Frequency has no unit "mhz". Nearest: MHz.');
    expect(message("5 ms/m", "conductivity")).toBe('Conductivity has no unit "ms/m". Nearest: mS/m.');
    expect(message("5 MHz", "length")).toBe('"5 MHz" is a frequency. Expected: length in m, cm, mm, ft or in.');
    expect(message("1e300 m", "length")).toBe('Length "1e300 m" is above 100000 m, the most that is read here.');
    expect(message("NaN m", "length")).toContain("is not a number with its unit");
    expect(message("Infinity", "number")).toContain("is not a number");
    expect(message("between 5 m and 1 m", "length")).toContain("the first end must be the lower one");
    expect(message("unknown", "length")).toContain("no source publishes a range");
    expect(message("12 m \u00b1 0 m", "length")).toContain("greater than zero");
  });

  it("offers text that would be right", () => {
    const mends = [
      ["7.1 mhz", "frequency", "7.1 MHz"],
      ["7,1 MHz", "frequency", "7.1 MHz"],
      ["between 1 and 5 kohm", "impedance", "between 1 kohm and 5 kohm"],
      ["between 5 m and 1 m", "length", "between 1 m and 5 m"],
    ] as const;
    for (const [text, dimension, mend] of mends) {
      const read = parseQuantity(text, dimension);
      expect(read.ok ? null : read.fault.mend).toBe(mend);
      expect(parseQuantity(mend, dimension).ok).toBe(true);
    }
  });

  it("keeps both ends to the rule", () => {
    expect(parseQuantity("1 m \u00b1 2 m", "length", { above: 0 }).ok).toBe(false);
    expect(parseQuantity("0 m", "length", { above: 0 }).ok).toBe(false);
    expect(parseQuantity("-3 m", "length", { least: 0 }).ok).toBe(false);
    expect(parseQuantity("120 %", "ratio").ok).toBe(false);
  });
});

describe("a span", () => {
  it("runs upwards; a pair keeps its order", () => {
    expect(parseSpan("7.0 MHz to 7.2 MHz", "frequency")).toEqual({ ok: true, value: { from: 7e6, to: 7.2e6 } });
    const down = parseSpan("7.2 MHz to 7.0 MHz", "frequency");
    expect(down.ok ? null : down.fault.mend).toBe("7.0 MHz to 7.2 MHz");
    const half = parseSpan("7.0 to 7.2 MHz", "frequency");
    expect(half.ok ? null : half.fault.mend).toBe("7.0 MHz to 7.2 MHz");
    const pair = parsePair("2450 ohm to 50 ohm", "impedance");
    expect(pair.ok && pair.value.map((q) => q.value)).toEqual([2450, 50]);
  });
});

describe("places, directions, conductors", () => {
  it("reads offsets in any order and plain triples", () => {
    const place = parsePlace(["4 m up", "9 m west"]);
    expect(place.ok && place.value.map((q) => q.value)).toEqual([-9, 0, 4]);
    const plain = parsePlace(["1 m", "-2 m", "3 m"]);
    expect(plain.ok && plain.value.map((q) => q.value)).toEqual([1, -2, 3]);
    const under = parsePlace(["0.3 m \u00b1 0.1 m under"]);
    expect(under.ok && under.value[2]).toEqual({ value: -0.3, low: -0.4, high: -0.19999999999999998, basis: "stated" });
    expect(parsePlace(["4 m up", "1 m under"]).ok).toBe(false);
    expect(parsePlace([]).ok).toBe(false);
  });

  it("counts directions clockwise from north", () => {
    const southWest = parseDirection("south-west");
    expect(southWest.ok && southWest.value.value).toBeCloseTo((225 * Math.PI) / 180, 12);
    const angle = parseDirection("250 deg");
    expect(angle.ok && angle.value.value).toBeCloseTo((250 * Math.PI) / 180, 12);
    const typo = parseDirection("sout-west");
    expect(typo.ok ? null : typo.fault.nearest).toBe("south-west");
  });

  it("reads conductors", () => {
    const wire = parseConductor("2 mm copper in 0.8 mm PVC");
    expect(wire.ok && [wire.value.diameter.value, wire.value.material, wire.value.insulation?.wall.value]).toEqual([
      0.002,
      "copper",
      0.0008,
    ]);
    const inches = parseConductor("0.1 in copper in 0.02 in PVC");
    expect(inches.ok && inches.value.insulation?.wall.value).toBeCloseTo(0.000508, 12);
    const tube = parseConductor("30 mm tube aluminium");
    expect(tube.ok && [tube.value.form, tube.value.insulation]).toEqual(["tube", null]);
    expect(parseConductor("1.6 mm copper bare").ok).toBe(true);
    expect(parseConductor("2 mm perfect").ok && true).toBe(true);
    const typo = parseConductor("2 mm coper");
    expect(typo.ok ? null : typo.fault.mend).toBe("2 mm copper");
    expect(parseConductor("copper").ok).toBe(false);
  });
});
