/** Lays out points and tables of reflected kernels in the module's memory, as assembly/tableLookUp.ts reads them. */
import type { Kernels } from "@feedpath/engine";
import type { Room } from "./instance";

export type Terms = Parameters<Kernels["addReflectedTerms"]>[0];
type Tables = Terms["tables"];
type Table = NonNullable<Tables["whole"]>;
type Band = Table["bands"][number];

const headBytes = 16;
const bandBytes = 64;

/** A band of a table: addresses are those of its numbers. */
interface Placed {
  readonly band: Band;
  readonly sums: number;
  readonly edges: number;
  readonly coefficients: number;
}

function writeBand({ band, sums, edges, coefficients }: Placed, at: number, view: DataView): void {
  [band.from, band.to, band.range].forEach((x, i) => {
    view.setFloat64(at + 8 * i, x, true);
  });
  const whole = [
    sums,
    band.sums?.length ?? 0,
    edges,
    band.edges.length - 1,
    band.termsInU,
    band.termsInS,
    coefficients,
  ];
  whole.forEach((x, i) => {
    view.setInt32(at + 24 + 4 * i, x, true);
  });
}

/** Address of a table; 0 for none. */
function putTable(room: Room, table: Table | null): number {
  if (!table) return 0;
  const at = room.take(headBytes + bandBytes * table.bands.length);
  const placed = table.bands.map((band) => ({
    band,
    sums: band.sums ? room.put(band.sums) : 0,
    edges: room.put(band.edges),
    coefficients: room.put(band.coefficients),
  }));
  const view = room.bytes();
  view.setFloat64(at, table.wavenumber, true);
  view.setInt32(at + 8, table.steep ? 4 : 2, true);
  view.setInt32(at + 12, table.bands.length, true);
  placed.forEach((p, b) => {
    writeBand(p, at + headBytes + bandBytes * b, view);
  });
  return at;
}

/** Number and addresses of the points and tables, in the order in which the module takes them. */
export function putPoints(room: Room, points: Terms["points"] | Points, tables: Tables) {
  const { count, position, direction, low } = points;
  for (let p = 0; p < count; p++) {
    if (low[p] ? !tables.lessImages : !tables.whole) throw new RangeError(`no table was given for point ${p}`);
  }
  return [
    ...([count, room.put(position), room.put(direction), room.put(low)] as const),
    ...([putTable(room, tables.lessImages), putTable(room, tables.whole)] as const),
  ] as const;
}

type Points = Parameters<Kernels["sumPairPower"]>[0]["points"];
