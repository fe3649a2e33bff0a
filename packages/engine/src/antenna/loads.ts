/** Lumped loads of an antenna placed on its wires. */
import { add, type Complex, complex, reciprocal } from "../numerics/complex";
import type { Antenna, Load } from "../station/antennaDescription";
import type { Lumped } from "../station/path";
import type { LumpedLoad, Point } from "../wires/structure";
import { meets } from "./shapes/shapeWires";
import { type Built, distance, type Leg, pointOf } from "./wireRun";

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

interface Spot {
  readonly wire: number;
  /** m from that wire's `from` end. */
  readonly distance: number;
}

/** Places at a length along a leg, two on an element counted from its middle; none beyond its end. */
function spotsOn(built: Built, leg: Leg, feeds: readonly Point[], along: number): readonly Spot[] {
  if (!leg.fromMiddle) return alongLeg(built, leg, feeds, along);
  const [wire] = leg.wires;
  const half = distance(built.wires[wire!]!.from, built.wires[wire!]!.to) / 2;
  if (along > half) return [];
  return (along === 0 ? [0] : [-along, along]).map((off) => ({ wire: wire!, distance: half + off }));
}

function alongLeg(built: Built, leg: Leg, feeds: readonly Point[], along: number): readonly Spot[] {
  const fed = (p: Point): boolean => feeds.some((feed) => meets(p, feed));
  let left = along;
  for (const index of leg.wires) {
    const wire = built.wires[index]!;
    const length = distance(wire.from, wire.to);
    if (left <= length) {
      const backwards = leg.wires.length === 1 && fed(wire.to) && !fed(wire.from);
      return [{ wire: index, distance: backwards ? length - left : left }];
    }
    left -= length;
  }
  return [];
}

function legsFor(built: Built, load: Load): readonly Leg[] {
  if (load.on === "both legs") return built.legs.filter((l) => l.name === "first leg" || l.name === "second leg");
  return built.legs.filter((l) => l.name === load.on);
}

/** Places every coil, capacitor, resistor and trap; hats are not computed yet and refuse. */
export function placeLoads(antenna: Antenna, built: Built): PlacedLoads {
  const loads: LumpedLoad[] = [];
  const notComputed: string[] = [];
  const feeds = [...built.feeds.map((f) => f.at), ...antenna.feeds.map((f) => pointOf(f.at))];
  for (const load of antenna.loads) {
    const component = load.component;
    if (load.kind === "hat" || component === null) return refuse("the capacitance hat on the antenna");
    if (load.length) notComputed.push(`the own length of the ${load.kind} on ${load.on}: it acts at one point`);
    const legs = legsFor(built, load);
    if (legs.length === 0)
      return refuse(`the ${load.kind} on "${load.on}": no such leg of this shape can carry a load`);
    for (const leg of legs) {
      const spots = load.fromFeed === "end" ? [] : spotsOn(built, leg, feeds, load.fromFeed.value);
      if (spots.length === 0)
        return refuse(`the ${load.kind} on "${load.on}": a load at or beyond the end of the wire`);
      const impedance = (w: number) => lumpedImpedance(component, w, load.kind === "trap");
      loads.push(...spots.map((spot) => ({ ...spot, impedance })));
    }
  }
  return { loads, refused: null, notComputed };
}

const refuse = (what: string): PlacedLoads => ({ loads: [], refused: what, notComputed: [] });
