/** The tables of `radials`. Watts to the sky are of the power that reaches the antenna now. */
import type { Column, Grid, Table } from "../../answer/answer";
import { column } from "../common/columns";
import { type RadialCurrent, spreadOf } from "./currents";
import type { RadialPoint, Study } from "./study";

/** `into` in W. */
export function radialTables(study: Study, into: number): Table[] {
  const current = currentTable(currentsShown(study));
  const swept = [
    sweptTable("radialCount", "count", study.byCount, into),
    sweptTable("radialLength", "length", study.byLength, into),
    sweptTable("sameWire", "count", study.sameWire, into),
    sweptTable("sameWireOtherwise", "count", study.otherwise, into),
  ];
  return [...swept.filter((t) => t.columns[t.axis]!.values.length > 0), ...current];
}

/** Those of the station, or of the largest number tried where it has none. */
export const currentsShown = ({ present, byCount }: Study): readonly RadialCurrent[] =>
  present.count > 0 ? present.currents : (byCount.find((p) => p.count >= 16) ?? byCount.at(-1) ?? present).currents;

function sweptTable(name: string, axis: "count" | "length", points: readonly RadialPoint[], into: number): Table {
  const of = (unit: string, value: (p: RadialPoint) => number | null): Column => column(unit, points.map(value));
  const ranges = points.flatMap((p) => (p.range ? [p.range] : []));
  const range =
    ranges.length === points.length
      ? { low: ranges.map((r) => r.low * into), high: ranges.map((r) => r.high * into) }
      : {};
  return {
    name,
    axis,
    columns: {
      count: of("1", (p) => p.count),
      length: of("m", (p) => p.length),
      wattsToSky: { ...of("W", (p) => p.share * into), ...range },
      skyShare: of("%", (p) => 100 * p.share),
      swrAtFeedPoint: of("1", (p) => p.swrAtFeedPoint),
      swrAtTransmitter: of("1", (p) => p.swrAtTransmitter),
      feedPointResistance: of("ohm", (p) => p.resistance),
      feedPointReactance: of("ohm", (p) => p.reactance),
      sendingResistance: of("ohm", (p) => p.resistance * p.share),
      gainAtElevation: of("dBi", (p) => p.gains.wanted),
      gainAt10: of("dBi", (p) => p.gains.low),
      gainAt25: of("dBi", (p) => p.gains.high),
      currentSpread: of("1", (p) => spreadOf(p.currents)),
      radiatedPower: of("W", (p) => p.radiatedPower),
    },
  };
}

function currentTable(currents: readonly RadialCurrent[]): Table[] {
  if (currents.length === 0) return [];
  const of = (unit: string, value: (c: RadialCurrent, i: number) => number): Column =>
    column(unit, currents.map(value));
  const columns = {
    radial: of("1", (_, i) => i + 1),
    azimuth: of("deg", (c) => c.azimuth),
    length: of("m", (c) => c.length),
    current: of("A", (c) => c.current),
    share: of("%", (c) => 100 * c.share),
  };
  return [{ name: "radialCurrents", axis: "radial", columns }];
}

/** Places along each radial, per cent of its length. */
const places = [0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100];

/** The current along each radial, A rms; none without radials. */
export function currentGrid(study: Study): Grid[] {
  const currents = currentsShown(study);
  if (currents.length === 0) return [];
  return [
    {
      name: "radialCurrentAlong",
      rows: { name: "radial", unit: "1", values: currents.map((_, i) => i + 1) },
      columns: { name: "place", unit: "%", values: places },
      value: "current",
      unit: "A",
      values: currents.map((c) => places.map((place) => currentAt(c, (place * c.length) / 100))),
    },
  ];
}

/** A rms at a distance (m) along a radial, straight between the nodes of the mesh. */
function currentAt({ along }: RadialCurrent, distance: number): number {
  const next = along.findIndex((p) => p.distance >= distance - 1e-9);
  if (next <= 0) return along.at(next)!.current;
  const [a, b] = [along[next - 1]!, along[next]!];
  return a.current + ((b.current - a.current) * (distance - a.distance)) / (b.distance - a.distance);
}
