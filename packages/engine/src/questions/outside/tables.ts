/** The tables of `outside`. */
import type { Column, Table } from "../../answer/answer";
import { column, columnOver } from "../common/columns";
import { resistances } from "./chokeStudy";
import type { Found } from "./facts";
import { currentAt, type OutsideState } from "./state";

const table = (name: string, axis: string, columns: Record<string, Column>): Table => ({ name, axis, columns });
const percent = (share: number | null): number | null => (share === null ? null : 100 * share);

export function outsideTables(found: Found): Table[] {
  const { study, places, lengths, bands } = found;
  const tables = [currentTable(found)];
  if (study)
    tables.push(
      table("chokeReactance", "reactance", {
        reactance: column("ohm", study.reactances),
        ...Object.fromEntries(resistances.map(({ name }, i) => [name, column("%", study.shares[i]!.map(percent))])),
      }),
    );
  if (places.length > 0)
    tables.push(
      table("chokePlace", "distance", {
        distance: columnOver(places, "m", (p) => p.place.distance),
        shareWithChoke: columnOver(places, "%", (p) => percent(p.share)),
        resistanceNeeded: columnOver(places, "ohm", (p) => p.ohmsNeeded),
      }),
    );
  if (lengths)
    tables.push(
      table("outsideLength", "extraLength", {
        extraLength: columnOver(lengths.points, "m", (p) => p.extra),
        share: columnOver(lengths.points, "%", (p) => 100 * p.share),
        shareWithoutChokes: columnOver(lengths.points, "%", (p) => 100 * p.shareWithoutChokes),
        swrAtTransmitter: columnOver(lengths.points, "1", (p) => (Number.isFinite(p.swr) ? p.swr : null)),
      }),
    );
  if (bands.length > 1)
    tables.push(
      table("outsideBands", "frequency", {
        frequency: columnOver(bands, "MHz", (b) => b.band.frequency.value / 1e6),
        share: columnOver(bands, "%", (b) => 100 * b.share),
        largestCurrent: columnOver(bands, "A", (b) => b.current),
        shareAtHouse: columnOver(bands, "%", (b) => 100 * b.house),
        largestAt: columnOver(bands, "m", (b) => b.at),
      }),
    );
  return tables;
}

/** Two nodes at one joint become one, or lie this far apart (m) where the current steps there (a bond). */
const apart = 1e-3;

function currentTable({ state, compared }: Found): Table {
  const kept = nodesOf(state);
  const distance = kept.map((n) => n.distance);
  const other = (one: OutsideState | undefined): readonly (number | null)[] =>
    distance.map((d) => (one ? currentAt(one, d) : null));
  return table("outsideCurrent", "distance", {
    distance: column("m", distance),
    current: columnOver(kept, "A", (n) => n.current),
    share: columnOver(kept, "%", (n) => (100 * n.current) / state.antennaCurrent),
    ...(compared.none ? { withoutChokes: column("A", other(compared.none.state)) } : {}),
    ...(compared.perfect ? { withPerfectChoke: column("A", other(compared.perfect.state)) } : {}),
  });
}

function nodesOf({ distance, current }: OutsideState): { distance: number; current: number }[] {
  const nodes: { distance: number; current: number }[] = [];
  for (const [i, d] of distance.entries()) {
    const last = nodes.at(-1);
    const a = current[i]!;
    if (!last || d > last.distance + 1e-6) nodes.push({ distance: d, current: a });
    else if (Math.abs(a - last.current) > 1e-3 * Math.max(a, last.current))
      nodes.push({ distance: last.distance + apart, current: a });
  }
  return nodes;
}
