import { readdirSync, readFileSync } from "node:fs";
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readStation } from "./readStation";
import { type DimensionName, dimensions } from "./units/dimensions";
import { formatQuantity } from "./units/formatQuantity";
import { parseQuantity } from "./units/parseQuantity";

const folder = new URL("../../../examples/", import.meta.url);
const examples = readdirSync(folder)
  .filter((name) => name.endsWith(".yaml"))
  .map((name) => readFileSync(new URL(name, folder), "utf8"));

/** Reads and holds what must always be so. */
function hold(text: string): void {
  const { station, problems, normalised } = readStation(text, { fileName: "x.yaml", readFile: () => null });
  expect(station === null).toBe(problems.length > 0);
  expect(normalised === "").toBe(station === null);
  const lines = text.replace(/^\ufeff/, "").split("\n");
  for (const problem of problems) {
    expect(problem.line).toBeGreaterThanOrEqual(1);
    expect(problem.line).toBeLessThanOrEqual(lines.length);
    expect(problem.column).toBeGreaterThanOrEqual(1);
    expect(problem.endColumn).toBeGreaterThanOrEqual(problem.column);
    expect(problem.endColumn).toBeLessThanOrEqual((lines[problem.line - 1]?.length ?? 0) + 1);
    expect(problem.message).toMatch(/[.!?]$/);
  }
}

const scraps = [
  ": ",
  "- ",
  "{",
  "}",
  "[",
  "]",
  ",",
  "&a ",
  "*a",
  "!!x ",
  "<<: ",
  "#",
  "'",
  '"',
  "|\n",
  "\n",
  "\t",
  "~",
  "null",
  "\r",
];
const values = [
  "unknown",
  "-1 m",
  "1e300 m",
  "NaN",
  "between 2 m and 1 m",
  "5",
  "0 ohm",
  "north",
  "__proto__",
  "1,5 m",
  "[]",
  "{}",
];

describe("any text", () => {
  it("ends in a station or in problems with their places", () => {
    fc.assert(fc.property(fc.string({ unit: "binary", maxLength: 200 }), hold), { numRuns: 150 });
    const yamlish = fc.array(
      fc.oneof(
        fc.constantFrom(...scraps, ...values, "feedpath", "path", "antenna", "dipole"),
        fc.string({ maxLength: 5 }),
      ),
    );
    fc.assert(
      fc.property(yamlish, (pieces) => hold(pieces.join(""))),
      { numRuns: 250 },
    );
  });

  it("does so for examples with pieces taken out, doubled or put in", () => {
    const change = fc.tuple(
      fc.constantFrom(...examples),
      fc.array(fc.tuple(fc.nat(2000), fc.nat(12), fc.constantFrom("", ...scraps, ...values)), {
        minLength: 1,
        maxLength: 3,
      }),
    );
    fc.assert(
      fc.property(change, ([example, edits]) => {
        const text = edits.reduce((old, [at, length, put]) => {
          const from = at % (old.length + 1);
          return old.slice(0, from) + put + old.slice(from + length);
        }, example);
        hold(text);
      }),
      { numRuns: 150 },
    );
  });

  it("does so for examples with a value exchanged", () => {
    fc.assert(
      fc.property(fc.constantFrom(...examples), fc.nat(), fc.constantFrom(...values), (example, which, value) => {
        const found = [...example.matchAll(/: ([\w.%/ -]+?)(?=[,}\]\n])/g)];
        const match = found[which % found.length];
        if (match) hold(example.slice(0, match.index + 2) + value + example.slice(match.index + match[0].length));
      }),
      { numRuns: 150 },
    );
  });
});

describe("a written station", () => {
  it("keeps names and notes of any letters", () => {
    let accepted = 0;
    const any = fc.oneof(
      fc.string({ unit: "binary", maxLength: 30 }),
      fc.array(fc.constantFrom(...scraps, "a", " ", "é")).map((l) => l.join("")),
    );
    fc.assert(
      fc.property(any, any, (title, name) => {
        const text = `feedpath: 1\nstation: ${JSON.stringify(title)}\nnote: ${JSON.stringify(name)}\nfrequency: 7.1 MHz
transmitter: { power: 100 W }\npath: [{ choke: 1 kohm, name: ${JSON.stringify(name)} }]
antenna: { dipole: { length: 20 m, height: 12 m } }\nearths: { ${JSON.stringify(title)}: { rod: 1 m } }\n`;
        const first = readStation(text, { fileName: "x.yaml" });
        if (!first.station) return;
        accepted++;
        expect(readStation(first.normalised, { fileName: "x.yaml" }).station).toEqual(first.station);
      }),
      { numRuns: 300 },
    );
    expect(accepted).toBeGreaterThan(30);
  });
});

describe("a written quantity", () => {
  const names = Object.keys(dimensions) as DimensionName[];

  it("reads back to the same numbers", () => {
    const share = fc.double({ min: 0.01, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...names), share, fc.nat(400), (name, part, perMille) => {
        const warm = name === "temperature";
        const value = warm
          ? 300 + 100 * part
          : Math.max(part * Math.min(dimensions[name].most / 2, 1e4), 2 * dimensions[name].least);
        const spread = warm ? perMille / 10 : (value * perMille) / 1000;
        const quantity = { value, low: value - spread, high: value + spread, basis: "stated" as const };
        const read = parseQuantity(formatQuantity(quantity, name), name);
        if (!read.ok) throw new Error(read.fault.message);
        expect(read.value.value).toBe(value);
        for (const end of ["low", "high"] as const) {
          expect(Math.abs(read.value[end] - quantity[end])).toBeLessThanOrEqual(1e-12 * Math.abs(value));
        }
      }),
      { numRuns: 300 },
    );
  });

  it("keeps what people write to the last bit", () => {
    const texts = [
      ["12 m \u00b1 0.5 m", "length"],
      ["3.2 uH \u00b1 5 %", "inductance"],
      ["between 1 kohm and 5 kohm", "impedance"],
      ["between 2 mS/m and 8 mS/m", "conductivity"],
      ["1.5 dB/100 m", "lossPerLength"],
      ["40 ft 6 in", "length"],
      ["20 degC \u00b1 5 degC", "temperature"],
      ["250 deg", "angle"],
    ] as const;
    for (const [text, name] of texts) {
      const first = parseQuantity(text, name);
      const again = first.ok ? parseQuantity(formatQuantity(first.value, name), name) : first;
      expect(again, text).toEqual(first);
    }
  });
});
