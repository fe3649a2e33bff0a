/** Things near by in a few words, as the file says them. English. */
import { metres, plainNumber } from "../quantity/format";
import type { Place } from "../station/place";
import type { Surrounding } from "../station/station";

type Conductor = Extract<Surrounding, { kind: "conductor" }>;
type Sheet = Extract<Surrounding, { kind: "sheet" }>;

const between = (a: Place, b: Place): number =>
  Math.hypot(a[0].value - b[0].value, a[1].value - b[1].value, a[2].value - b[2].value);

const lengthOf = (points: readonly Place[]): number =>
  points.slice(1).reduce((sum, p, i) => sum + between(points[i]!, p), 0);

/** "12 m of zinc, 100 mm thick". */
export function saysOfConductor({ points, wire }: Conductor): string {
  return `${metres(lengthOf(points))} of ${wire.material}, ${plainNumber(1000 * wire.diameter.value, 1)} mm thick`;
}

/** "sheet, 4 m by 3 m". */
export function saysOfSheet({ corners }: Sheet): string {
  const [a, b, c] = corners;
  return a && b && c ? `sheet, ${metres(between(a, b))} by ${metres(between(b, c))}` : "sheet";
}
