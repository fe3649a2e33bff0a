/** Structures on a fine grid of coordinates, so that one that is raised is the same to the last bit but for its height. */
import type { ElectrodeArms } from "./electrodes";
import type { Point, Soil, Structure } from "./structure";

/** m: a nanometre, as a power of two, so that sums and differences of coordinates are exact up to 4 million metres. */
const pitch = 2 ** -30;

const snapped = (p: Point, down: number): Point => [
  Math.round(p[0] / pitch) * pitch,
  Math.round(p[1] / pitch) * pitch,
  Math.round(p[2] / pitch) * pitch - down,
];

/** The structure with all coordinates on the grid, lowered by `down` (m, on the grid). */
export function onGrid(structure: Structure, down = 0): Structure {
  const { wires, feeds, contacts } = structure;
  return {
    ...structure,
    wires: wires.map((w) => ({ ...w, from: snapped(w.from, down), to: snapped(w.to, down) })),
    feeds: feeds.map((f) => ({ ...f, at: snapped(f.at, down) })),
    ...(contacts ? { contacts: contacts.map((c) => ({ ...c, at: snapped(c.at, down) })) } : {}),
  };
}

/**
 * Height (m, on the grid) that may be taken off a structure without changing its mesh and its direct terms: that of its
 * first wire's start. None over a perfect plane, whose images are direct terms, and none with electrodes, which lie on the soil.
 */
export function heightOf({ wires }: Structure, soil: Soil, arms: ElectrodeArms): number {
  if (soil.kind === "perfect" || arms.length > 0 || wires.length === 0) return 0;
  return Math.round(wires[0]!.from[2] / pitch) * pitch;
}

/** All that the mesh and the direct terms of a structure hang on, as text: positions and thickness, not metals, sleeves' dielectrics or loads' impedances. */
export function geometryOf({ wires, feeds, loads, gaps = [], contacts = [] }: Structure): string {
  return JSON.stringify([
    wires.map((w) => [w.from, w.to, w.radius, w.insulation?.outerRadius ?? 0, w.bar ?? false]),
    feeds.map((f) => [f.at, f.from, f.into]),
    loads.map((l) => [l.wire, l.distance]),
    gaps.map((g) => [g.wire, g.distance]),
    contacts.map((c) => [c.at, c.reach]),
  ]);
}
