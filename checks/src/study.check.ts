/** A part of the study of structures (`npm run study` does all of it on finer meshes; its table is in bench/README.md). */
import { describe, expect, it } from "vitest";
import { closedShapes } from "./study/closedShapes";
import { measure } from "./study/measure";
import { openShapes } from "./study/openShapes";

const all = [...openShapes, ...closedShapes];
/** Quick ones of different kind: one of the ends, of junctions, of loops, of close wires, of loads, of sleeves, of two feeds. */
const quick = [
  "level dipole 2 m over poor soil",
  "thick dipole, radius 60 mm at 28 MHz",
  "thick mast with a thin wire from its top, 30 to 1",
  "two masts on a perfect plane, one radius tenfold the other, two feeds",
  "small loop tuned by a capacitor",
  "folded dipole six radii apart",
  "trap dipole",
  "dipole in PVC",
  "dipole over soil in layers",
];

describe("the study of structures", () => {
  it("has at least 30 of different names", () => {
    expect(new Set(all.map((s) => s.name)).size).toBe(all.length);
    expect(all.length).toBeGreaterThanOrEqual(30);
  });

  it.each(quick)("%s: the reported error bounds that against a mesh of twice as many elements", (name) => {
    const found = measure(all.find((s) => s.name === name)!, [1.5, 2]);
    expect(found.error).toBeLessThan(found.estimate);
    expect(found.errorOverGoal).toBeLessThan(1);
    expect(found.gainError).toBeLessThan(0.05);
    expect(found.residue).toBeLessThan(1e-3);
    expect(found.nonReciprocity).toBeLessThan(1e-8);
  });
});
