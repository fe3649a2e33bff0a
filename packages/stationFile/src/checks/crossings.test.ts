import { describe, expect, it } from "vitest";
import { readStation } from "../readStation";

const problems = (...more: readonly string[]) =>
  readStation(
    [
      "feedpath: 1",
      "station: T",
      "frequency: 7.1 MHz",
      "transmitter: { power: 100 W }",
      "path: []",
      "antenna:",
      "  wires:",
      "    - { name: a, from: [10 m up], to: [10 m east, 10 m up], wire: 2 mm copper }",
      "    - { name: b, from: [10 m up], to: [10 m west, 10 m up], wire: 2 mm copper }",
      ...more.map((text) => `    - { name: c, ${text}, wire: 2 mm copper }`),
      "  feed: { at: [10 m up], from: a, into: b }",
      "ground: { permittivity: 13, conductivity: 5 mS/m }",
    ].join("\n"),
    { fileName: "x.yaml" },
  ).problems.map(({ message, line }) => `${line}: ${message}`);

describe("wires one by one", () => {
  it("may pass each other, and meet at their ends", () => {
    expect(problems()).toEqual([]);
    expect(problems("from: [5 m east, 3 m south, 10.1 m up], to: [5 m east, 3 m north, 10.1 m up]")).toEqual([]);
    expect(problems("from: [10 m east, 10 m up], to: [10 m east, 5 m north, 10 m up]")).toEqual([]);
  });

  it("that cross without a joint are told with their names, the line and the place", () => {
    expect(problems("from: [4 m east, 3 m south, 10 m up], to: [4 m east, 3 m north, 10 m up]")).toEqual([
      '10: The wires "a" and "c" cross without a joint, 4 m along the first. Split both there, or move one aside.',
    ]);
  });

  it("that lie on each other are told", () => {
    expect(problems("from: [10 m east, 10 m up], to: [10 m up]")[0]).toContain('"a" and "c" have the same two ends');
  });
});
