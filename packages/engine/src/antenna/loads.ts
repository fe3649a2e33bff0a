/** Lumped loads of an antenna placed on its wires. */
import { add, type Complex, complex, reciprocal } from "../numerics/complex";
import type { Antenna, Load } from "../station/antennaDescription";
import type { Lumped } from "../station/path";
import type { LumpedLoad } from "../wires/structure";
import { meets } from "./shapes/shapeWires";
import { type Built, type BuiltFeed, distance, type Leg } from "./wireRun";

export interface PlacedLoads {
  readonly loads: readonly LumpedLoad[];
  readonly refused: string | null;
  readonly notComputed: readonly string[];
}

/** Impedance of a lumped component at angular frequency w; a coil or capacitor of quality Q has the series resistance |X|/Q. */
export function lumpedImpedance(c: Lumped, w: number, parallel: boolean): Complex {
  const q = c.q.value;
  const coil = c.coil && complex((w * c.coil.value) / q, w * c.coil.value);
  const x = c.capacitor ? 1 / (w * c.capacitor.value) : 0;
  // In a trap Q belongs to the coil; its capacitor is taken as lossless beside it.
  const capacitor = c.capacitor && complex(c.coil ? 0 : x / q, -x);
  const resistor = c.resistor && complex(c.resistor.value);
  const present = [coil, capacitor, resistor].filter((z) => z !== null);
  return parallel ? reciprocal(present.map(reciprocal).reduce(add)) : present.reduce(add);
}

/** Wire and distance from that wire's `from` end, at a length along a leg; null beyond its end. */
function alongLeg(
  built: Built,
  leg: Leg,
  feed: BuiltFeed | undefined,
  along: number,
): { wire: number; distance: number } | null {
  let left = along;
  for (const index of leg.wires) {
    const wire = built.wires[index]!;
    const length = distance(wire.from, wire.to);
    if (left <= length) {
      const backwards =
        leg.wires.length === 1 && feed !== undefined && meets(wire.to, feed.at) && !meets(wire.from, feed.at);
      return { wire: index, distance: backwards ? length - left : left };
    }
    left -= length;
  }
  return null;
}

function legsFor(built: Built, load: Load): readonly Leg[] {
  if (load.on === "both legs") return built.legs.filter((l) => l.name === "first leg" || l.name === "second leg");
  return built.legs.filter((l) => l.name === load.on);
}

/** Places every coil, capacitor, resistor and trap; hats are not computed yet and refuse. */
export function placeLoads(antenna: Antenna, built: Built): PlacedLoads {
  const loads: LumpedLoad[] = [];
  const notComputed: string[] = [];
  for (const load of antenna.loads) {
    const component = load.component;
    if (load.kind === "hat" || component === null) return refuse("the capacitance hat on the antenna");
    if (load.length) notComputed.push(`the own length of the ${load.kind} on ${load.on}: it acts at one point`);
    const legs = legsFor(built, load);
    if (legs.length === 0)
      return refuse(`the ${load.kind} on "${load.on}": no such leg of this shape can carry a load`);
    for (const leg of legs) {
      const spot = load.fromFeed === "end" ? null : alongLeg(built, leg, built.feeds[0], load.fromFeed.value);
      if (spot === null) return refuse(`the ${load.kind} on "${load.on}": a load at or beyond the end of the wire`);
      loads.push({ ...spot, impedance: (w) => lumpedImpedance(component, w, load.kind === "trap") });
    }
  }
  return { loads, refused: null, notComputed };
}

const refuse = (what: string): PlacedLoads => ({ loads: [], refused: what, notComputed: [] });
