/** Loads on the wires of an antenna. */
import type { Load } from "@feedpath/engine";
import type { FileLoad } from "../schema/antenna";
import { fill } from "./build";
import { circuit, lumpedOf, quality } from "./components";
import { type ShapeSpot, wireOf } from "./shapes";
import { theAntenna } from "./spot";

export function buildLoad(spot: ShapeSpot, written: FileLoad, index: number): Load {
  const named = { ...spot, name: `load ${index + 1} of ${theAntenna(spot.name)}` };
  const base = { on: written.on, fromFeed: written["from feed"], length: written.length ?? null };
  if ("hat" in written) {
    const { spokes, length, ring } = written.hat;
    const wire = wireOf(named, written.hat.wire, "hat.wire");
    const closed = fill(spot.build, ring, {
      place: `${spot.place}.hat.ring`,
      name: `ring of the hat of ${spot.name}`,
      value: "no" as const,
      says: "no",
      reason: "not given",
    });
    return { ...base, kind: "hat", component: null, hat: { spokes, length, wire, ring: closed === "yes" } };
  }
  if ("trap" in written) {
    const { coil, capacitor, Q } = written.trap;
    const component = { coil, capacitor, resistor: null, q: quality(named, Q, "component.q", "trap") };
    return { ...base, kind: "trap", component, hat: null };
  }
  if ("series" in written || "parallel" in written) return { ...base, ...circuitOf(named, written), hat: null };
  const kind = "coil" in written ? "coil" : "capacitor" in written ? "capacitor" : "resistor";
  const selfCapacitance = "coil" in written ? (written["self-capacitance"] ?? null) : null;
  return { ...base, kind, component: lumpedOf(named, written), selfCapacitance, hat: null };
}

/** Coil, capacitor and resistor in series or in parallel; at least one of them. */
function circuitOf(spot: ShapeSpot, written: Extract<FileLoad, { series: unknown } | { parallel: unknown }>) {
  const kind = "series" in written ? "series" : "parallel";
  const component = circuit(spot, "series" in written ? written.series : written.parallel, kind);
  return { kind, component } as const;
}
