/** Lumped loads and capacitance hats of an antenna placed on its wires. */
import { type Complex, scale } from "../numerics/complex";
import type { Antenna, Load } from "../station/antennaDescription";
import type { LumpedLoad, Point } from "../wires/structure";
import { type PlacedHat, withHats } from "./hats";
import { feedPlaces, legsOf, type Spot, spotsOn } from "./loadSpots";
import { loadImpedance } from "./lumpedImpedance";
import type { Built, Leg } from "./wireRun";

export interface PlacedLoads {
  /** The antenna with the wires of its hats; the loads count its wires. */
  readonly built: Built;
  readonly loads: readonly LumpedLoad[];
  /** Why a load cannot be where the file puts it. */
  readonly refused: string | null;
}

/** A load of its own length acts in this many places along it, each no shorter than some radii. */
const mostParts = 5;
const partInRadii = 6;

interface Place {
  readonly antenna: Antenna;
  readonly built: Built;
  readonly feeds: readonly Point[];
}

/** Places every coil, capacitor, resistor, trap, circuit and hat of an antenna. */
export function placeLoads(antenna: Antenna, built: Built): PlacedLoads {
  const place: Place = { antenna, built, feeds: feedPlaces(antenna, built) };
  const loads: LumpedLoad[] = [];
  const hats: PlacedHat[] = [];
  for (const load of antenna.loads) {
    const legs = legsOf(built, load);
    if (legs.length === 0)
      return refuse(built, `the ${load.kind} on "${load.on}": no such leg of this shape can carry a load`);
    for (const leg of legs) {
      const trouble = load.hat ? putHat(place, leg, load, hats) : putLoad(place, leg, load, loads);
      if (trouble) return refuse(built, `the ${load.kind} on "${load.on}": ${trouble}`);
    }
  }
  return { ...withHats(built, loads, hats), refused: null };
}

const refuse = (built: Built, what: string): PlacedLoads => ({ built, loads: [], refused: what });

function putHat({ built, feeds }: Place, leg: Leg, load: Load, hats: PlacedHat[]): string | null {
  const spots = spotsOn(built, leg, feeds, load.fromFeed === "end" ? "end" : load.fromFeed.value);
  if (spots.length === 0) return "a hat beyond the end of the wire";
  const hat = load.hat!;
  if (hat.ring && hat.spokes < 3) return "a ring needs three spokes or more";
  hats.push(...spots.map((spot) => ({ spot, hat })));
  return null;
}

function putLoad(place: Place, leg: Leg, load: Load, loads: LumpedLoad[]): string | null {
  const component = load.component;
  if (!component) return "nothing is known of it";
  if (load.fromFeed === "end") return "a load at the end of the wire carries no current";
  const whole = (w: number) => loadImpedance(load, component, w);
  const parts = partsAlong(place.built, leg, load);
  for (const along of parts) {
    const spots = spotsOn(place.built, leg, place.feeds, along);
    if (spots.length === 0 || atFreeEnd(place, leg, spots))
      return "a load that reaches to or beyond the end of the wire";
    const impedance = (w: number): Complex => scale(whole(w), 1 / parts.length);
    loads.push(...spots.map((spot) => ({ ...spot, impedance })));
  }
  return null;
}

function atFreeEnd({ built, feeds }: Place, leg: Leg, spots: readonly Spot[]): boolean {
  const ends = spotsOn(built, leg, feeds, "end");
  return spots.some((s) => ends.some((e) => e.wire === s.wire && Math.abs(e.distance - s.distance) < 1e-6));
}

/** Distances from the feed at which a load acts: its middle, or evenly along its own length. */
function partsAlong(built: Built, leg: Leg, load: Load): number[] {
  const middle = load.fromFeed === "end" ? 0 : load.fromFeed.value;
  const own = load.length?.value ?? 0;
  const radius = Math.max(...leg.wires.map((w) => built.wires[w]!.radius));
  const count = Math.min(mostParts, Math.max(1, Math.floor(own / (partInRadii * radius))));
  return Array.from({ length: count }, (_, i) => middle + own * ((i + 0.5) / count - 0.5));
}
