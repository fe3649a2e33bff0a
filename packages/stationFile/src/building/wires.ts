/** Wires given one by one. */
import type { Conductor, Place, Shape } from "@feedpath/engine";
import type { FileWire } from "../schema/antenna";
import { readLongConductor } from "../schema/conductors";
import { fault } from "./build";
import { type ShapeSpot, wireOf } from "./shapes";

export function buildWires(spot: ShapeSpot, written: readonly FileWire[]): Shape {
  const wires = written.map((wire, index) => ({
    name: wire.name,
    from: wire.from,
    to: wire.to,
    wire: ownWire(spot, wire, index),
  }));
  return { kind: "wires", wires };
}

/** A wire's conductor: `wire`, or `diameter` and `material` on its entry. */
function ownWire(spot: ShapeSpot, wire: FileWire, index: number): Conductor {
  const { diameter, material, form, insulation } = wire;
  const path = [...spot.path, index];
  const named = { ...spot, name: wire.name };
  if (diameter === undefined && material === undefined) {
    if (insulation || form)
      spot.build.report(path, "value", fault("This wire needs its diameter and material too.", "diameter, material"));
    return wireOf(named, wire.wire, `wires.${index}.wire`);
  }
  if (wire.wire || diameter === undefined || material === undefined) {
    const message = "A wire has wire, or diameter and material: write one of the two.";
    spot.build.report(path, "value", fault(message, "wire: 2 mm copper"));
    return wireOf(named, wire.wire, `wires.${index}.wire`);
  }
  const read = readLongConductor({ diameter, material, form, insulation });
  if (read.ok) return read.value;
  spot.build.report([...path, "material"], "value", read.fault);
  return wireOf(named, undefined, `wires.${index}.wire`);
}

/** The same place, to a micrometre. */
export const samePlace = (a: Place, b: Place): boolean =>
  a.every((quantity, axis) => Math.abs(quantity.value - (b[axis]?.value ?? Number.NaN)) < 1e-6);
