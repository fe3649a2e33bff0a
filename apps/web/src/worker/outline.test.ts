import { describe, expect, it } from "vitest";
import { outlineEntries } from "./outline";

const text = `feedpath: 1
station: A school, one wire
transmitter: { power: 100 W, duty: 40 %, designed for: 50 ohm }
path:
  - { line: RG-213/U, length: 28 m, route: [[1 m up], [2 m up]] }
  - choke: between 1 kohm and 5 kohm
  - switch: roof relay
    positions:
      high: [{ line: RG-58C/U, length: 2 m, name: high line }, { feed: high }]
      low: [{ feed: low }]
antenna:
  dipole: { length: 20.1 m, height: 12 m, direction: east, wire: 2 mm copper }
ground:
  permittivity: 13
  conductivity: 5 mS/m # from a map
`;

describe("outline of a station file", () => {
  const entries = outlineEntries(text);

  it("lists transmitter, parts, antenna and ground in the file's order, branches at their place", () => {
    expect(entries.map(({ label }) => label)).toEqual([
      "transmitter",
      "line 1",
      "choke",
      "switch",
      "high line",
      "dipole",
      "ground",
    ]);
    expect(entries.map(({ line }) => line)).toEqual([3, 5, 6, 7, 9, 12, 14]);
  });

  it("knows what the answers call each part", () => {
    expect(entries.map(({ names }) => names[0])).toEqual([
      "transmitter",
      "line 1",
      "choke 1",
      "roof relay",
      "high line",
      "dipole",
      "soil",
    ]);
  });

  it("gives each value its exact place, so that writing it back changes nothing", () => {
    for (const value of entries.flatMap(({ values }) => values))
      expect(text.slice(value.from, value.to)).toBe(value.text);
  });

  it("shows the first values of each, without routes and comments", () => {
    const valuesOf = (label: string) =>
      entries.find((entry) => entry.label === label)?.values.map((value) => value.text);
    expect(valuesOf("transmitter")).toEqual(["100 W", "40 %"]);
    expect(valuesOf("line 1")).toEqual(["RG-213/U", "28 m"]);
    expect(valuesOf("choke")).toEqual(["between 1 kohm and 5 kohm"]);
    expect(valuesOf("ground")).toEqual(["13", "5 mS/m"]);
  });

  it("finds nothing in a text that is no station", () => {
    expect(outlineEntries("just words")).toEqual([]);
    expect(outlineEntries("")).toEqual([]);
  });

  it("writes out what would turn the reading direction of a part's name", () => {
    const text = 'feedpath: 1\npath:\n  - { line: RG-213/U, name: "a \\u202Eeno", length: 3 m }\n';
    expect(outlineEntries(text).map(({ label }) => label)).toEqual(["a ‹U+202E›eno"]);
  });
});
