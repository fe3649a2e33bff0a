/** Earths: where wires lead into the soil, and what resistance they meet there. */
import { complex } from "../numerics/complex";
import type { Quantity } from "../quantity/quantity";
import type { Earth, Station } from "../station/station";
import type { Point, Wire } from "../wires/structure";
import { addWires, assume, type Growing, samePoint } from "./growing";
import { distance } from "./wireRun";

/** Height (m) at which a wire that leads into the soil ends: its electrode lies there. */
export const contactHeight = 0.02;
/** A place at most this high (m) stands on its earth without a lead. */
const withoutLead = 0.1;
/** Reach of an electrode whose size is not given, m: half of a short rod. */
const usualReach = 0.6;
const leadRadius = 2e-3;
const copper = 5.8e7;

const lead = (name: string, from: Point, to: Point): Wire => ({
  name,
  from,
  to,
  radius: leadRadius,
  conductivity: copper,
  permeability: 1,
  insulation: null,
});

/** Half of a rod's or strip's length, the radius of a plate. */
export function reachOf(earth: Earth): number {
  if (!earth.size) return usualReach;
  return earth.form === "plate" ? Math.sqrt(earth.size.value / Math.PI) : earth.size.value / 2;
}

/**
 * Joins a place of the structure to an earth of the file, by a straight bonding conductor where the earth lies elsewhere.
 * @returns false where there is no soil, or the earth has no resistance to work with (told in `notComputed`).
 */
export function connectToEarth(station: Station, growing: Growing, earthName: string, from: Point): boolean {
  const earth = station.earths.find((e) => e.name === earthName);
  if (!earth?.resistance) {
    growing.notComputed.push(`not computed yet: the earth "${earthName}", whose resistance the file does not give`);
    return false;
  }
  const spot: Point = earth.at ? [earth.at[0].value, earth.at[1].value, 0] : [from[0], from[1], 0];
  return connectToSoil(
    station,
    growing,
    { name: earth.name, resistance: earth.resistance, reach: reachOf(earth) },
    from,
    spot,
  );
}

export interface EarthHere {
  readonly name: string;
  readonly resistance: Quantity;
  readonly reach: number;
}

/** Joins a place to the soil at a spot (its height is ignored) through a resistance. */
export function connectToSoil(station: Station, growing: Growing, earth: EarthHere, from: Point, spot: Point): boolean {
  if (station.ground.kind === "free space") {
    growing.notComputed.push(`the earth "${earth.name}" is left out: there is no soil in free space`);
    return false;
  }
  const height = station.ground.kind === "perfect" ? 0 : contactHeight;
  const here = Math.hypot(from[0] - spot[0], from[1] - spot[1]) < 1e-6;
  const standsOnIt = here && (station.ground.kind === "perfect" ? from[2] <= 1e-6 : from[2] <= withoutLead);
  const at: Point = standsOnIt ? from : [spot[0], spot[1], height];
  const there = growing.contacts.find((c) => samePoint(c.at, at));
  if (there && there.name !== earth.name)
    growing.notComputed.push(`the earth "${earth.name}" lies where "${there.name}" does: both are taken as that one`);
  if (!there) {
    const { resistance } = earth;
    const closing = { name: earth.name, kind: "earth" as const, impedance: () => complex(resistance.value) };
    growing.contacts.push({ name: earth.name, at, reach: earth.reach, closing });
    assume(
      growing,
      `earth "${earth.name}"`,
      "the same resistance at every frequency",
      "what is measured at mains frequency is a lower guide only; its wire is in the model",
    );
  }
  if (standsOnIt) return true;
  const known = growing.wires.some((w) => samePoint(w.from, from) && samePoint(w.to, at));
  if (!known) {
    for (const w of addWires(growing, [lead(`conductor to ${earth.name}`, from, at)])) growing.resting.add(w);
    assume(
      growing,
      `conductor to "${earth.name}"`,
      `straight, ${Number(distance(from, at).toFixed(2))} m of 4 mm copper`,
      "the file does not say how it runs",
    );
  }
  return true;
}
