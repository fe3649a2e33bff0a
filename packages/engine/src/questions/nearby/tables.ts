/** The tables of `nearby`. */
import type { Column, Table } from "../../answer/answer";
import type { Point, Wire } from "../../wires/structure";
import type { NearbyFacts } from "../../words/nearbyFacts";
import { columnOver } from "../common/columns";
import { azimuthCut, elevationCut } from "../common/patternTables";
import type { Worked } from "../common/worked";
import type { Study, ThingStudy } from "./study";

const finite = (x: number): number | null => (Number.isFinite(x) ? x : null);

/** `distance`, `distance2`, ... in the order of `parameters.things`. */
export function nearbyTables(
  worked: Worked,
  study: Study,
  facts: NearbyFacts,
  cut: { azimuth: number; elevation: number; overSoil: boolean },
): Table[] {
  const { driven } = study.withoutAll;
  return [
    thingTable(facts),
    ...study.things.flatMap((one, i) => distanceTable(one, i)),
    ...remedyTable(facts),
    currentTable(worked, study),
    { ...elevationCut(driven, cut.azimuth, cut.overSoil), name: "elevationCutWithout" },
    { ...azimuthCut(driven, cut.elevation), name: "azimuthCutWithout" },
  ];
}

function thingTable({ things, antennaCurrent }: NearbyFacts): Table {
  return {
    name: "things",
    axis: "thing",
    columns: {
      thing: columnOver(things, "1", (_, i) => i + 1),
      distance: columnOver(things, "m", (t) => t.distance),
      swrWithout: columnOver(things, "1", (t) => finite(t.without.swr)),
      feedPointResistanceWithout: columnOver(things, "ohm", (t) => t.without.feedPoint.re),
      feedPointReactanceWithout: columnOver(things, "ohm", (t) => t.without.feedPoint.im),
      gainWithout: columnOver(things, "dBi", (t) => t.without.gain),
      radiatedPowerWithout: columnOver(things, "W", (t) => t.without.radiated),
      current: columnOver(things, "A", (t) => t.induced.current),
      share: columnOver(things, "%", (t) => (100 * t.induced.current) / antennaCurrent),
      heat: columnOver(things, "W", (t) => t.induced.heat),
      clearDistance: columnOver(things, "m", (t) => t.clear?.distance ?? null),
      resonance: columnOver(things, "MHz", (t) => (t.resonance?.frequency ? t.resonance.frequency / 1e6 : null)),
    },
  };
}

/** Fewer points than this make no curve. */
const fewest = 3;

function distanceTable({ distances }: ThingStudy, index: number): Table[] {
  // Sideways past a thing the nearest wires may come nearer for a while: only what grows can be an axis.
  const points = (distances?.points ?? []).filter((p, i, all) => all.slice(0, i).every((q) => q.distance < p.distance));
  if (points.length < fewest) return [];
  return [
    {
      name: index === 0 ? "distance" : `distance${index + 1}`,
      axis: "distance",
      columns: {
        distance: columnOver(points, "m", (p) => p.distance),
        moved: columnOver(points, "m", (p) => p.moved),
        swr: columnOver(points, "1", (p) => finite(p.swr)),
        gain: columnOver(points, "dBi", (p) => p.gain),
        feedPointResistance: columnOver(points, "ohm", (p) => p.feedPoint.re),
        feedPointReactance: columnOver(points, "ohm", (p) => p.feedPoint.im),
      },
    },
  ];
}

function remedyTable({ things }: NearbyFacts): Table[] {
  const rows = things.flatMap((t, i) => t.remedies.map((r) => ({ ...r, thing: i + 1 })));
  if (rows.length === 0) return [];
  return [
    {
      name: "remedies",
      axis: "remedy",
      columns: {
        remedy: columnOver(rows, "1", (_, i) => i + 1),
        thing: columnOver(rows, "1", (r) => r.thing),
        at: columnOver(rows, "m", (r) => r.at),
        swr: columnOver(rows, "1", (r) => finite(r.state.swr)),
        gain: columnOver(rows, "dBi", (r) => r.state.gain),
        radiatedPower: columnOver(rows, "W", (r) => r.state.radiated),
      },
    },
  ];
}

/** Pieces a wire is divided into at most. */
const mostPieces = 12;

/** Current along all wires in straight pieces: `thing` 0 is the antenna, else the number of a thing near by. */
function currentTable(worked: Worked, { currents, things }: Study): Table {
  const { wires } = worked.point.antenna.build.structure;
  const whose = (w: number): number => things.findIndex((one) => one.thing.wires.includes(w)) + 1;
  const pieces = wires.flatMap((wire, w) => {
    const along = currents.wires[w]!;
    const step = Math.max(1, Math.ceil((along.distance.length - 1) / mostPieces));
    const nodes = along.distance.map((_, i) => i).filter((i) => i % step === 0 || i === along.distance.length - 1);
    return nodes.slice(1).map((to, i) => {
      const from = nodes[i]!;
      const ends = [from, to].map((n) => placeOn(wire, along.distance[n]!)) as [Point, Point];
      return { ends, current: (along.magnitude[from]! + along.magnitude[to]!) / 2, thing: whose(w) };
    });
  });
  const place = (end: 0 | 1, axis: 0 | 1 | 2): Column => columnOver(pieces, "m", (p) => p.ends[end][axis]);
  return {
    name: "currents",
    axis: "piece",
    columns: {
      piece: columnOver(pieces, "1", (_, i) => i + 1),
      thing: columnOver(pieces, "1", (p) => p.thing),
      current: columnOver(pieces, "A", (p) => p.current),
      ...{ fromEast: place(0, 0), fromNorth: place(0, 1), fromUp: place(0, 2) },
      ...{ toEast: place(1, 0), toNorth: place(1, 1), toUp: place(1, 2) },
    },
  };
}

function placeOn(wire: Wire, distance: number): Point {
  const length = Math.hypot(wire.to[0] - wire.from[0], wire.to[1] - wire.from[1], wire.to[2] - wire.from[2]);
  const at = (axis: 0 | 1 | 2): number => wire.from[axis] + (distance / length) * (wire.to[axis] - wire.from[axis]);
  return [at(0), at(1), at(2)];
}
