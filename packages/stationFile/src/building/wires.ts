/** Wires given one by one. */
import type { Conductor, Place, Shape } from "@feedpath/engine";
import { weightPerMetre } from "../catalogue/wireWeights";
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
  return {
    kind: "wires",
    wires: wires.map((wire, index) => ({ ...wire, ...hangingOf(spot, written[index]!, wire.wire, index) })),
  };
}

/** How a wire hangs: its length, or the pull on it with the weight of its metal and insulation. */
function hangingOf(spot: ShapeSpot, { name, length, tension }: FileWire, wire: Conductor, index: number) {
  const path = [...spot.path, index];
  if (length && tension) {
    const message = "A hanging wire has its length, or the pull on it: write one of the two.";
    spot.build.report([...path, "tension"], "key", fault(message, "length or tension"));
  }
  if (length) return { hangs: { kind: "length", length } as const };
  if (!tension) return {};
  const weight = weightPerMetre(wire);
  if (weight !== null) return { hangs: { kind: "tension", tension, weight } as const };
  const message = `What a metre of the wire "${name}" weighs is not known for its material: give its length instead.`;
  spot.build.report([...path, "tension"], "value", fault(message, "length: the wire's own length"));
  return {};
}

/** A wire's conductor: `wire`, or `diameter` and `material` on its entry. */
function ownWire(spot: ShapeSpot, wire: FileWire, index: number): Conductor {
  const { diameter, material, form, wall, insulation } = wire;
  const path = [...spot.path, index];
  const named = { ...spot, name: wire.name };
  if (diameter === undefined && material === undefined) {
    if (insulation || form || wall)
      spot.build.report(path, "value", fault("This wire needs its diameter and material too.", "diameter, material"));
    return wireOf(named, wire.wire, `wires.${index}.wire`);
  }
  if (wire.wire || diameter === undefined || material === undefined) {
    const message = "A wire has wire, or diameter and material: write one of the two.";
    spot.build.report(path, "value", fault(message, "wire: 2 mm copper"));
    return wireOf(named, wire.wire, `wires.${index}.wire`);
  }
  const read = readLongConductor({ diameter, material, form, wall, insulation });
  if (read.ok) return read.value;
  spot.build.report([...path, "material"], "value", read.fault);
  return wireOf(named, undefined, `wires.${index}.wire`);
}

/** The same place, to a micrometre. */
export const samePlace = (a: Place, b: Place): boolean =>
  a.every((quantity, axis) => Math.abs(quantity.value - (b[axis]?.value ?? Number.NaN)) < 1e-6);
