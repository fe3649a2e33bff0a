/** Field that the soil reflects, from current moments and reflected kernels: E = -jw mu0 A - grad Phi, H = curl A. */
import { vacuumImpedance } from "../numerics/vacuum";
import type { FieldSum } from "./nearDirect";
import type { NearKernels } from "./nearKernels";
import type { WireMoment } from "./nearMoments";

const g = new Float64Array(20);

/** Adds (factor of re and im of kernel `place`) times the moment to component `at` of the sum. */
function addTerm(moment: Float64Array, factor: number, place: number, turn: number, at: number, out: FieldSum): void {
  const re = moment[0]! * g[2 * place]! - moment[1]! * g[2 * place + 1]!;
  const im = moment[0]! * g[2 * place + 1]! + moment[1]! * g[2 * place]!;
  // turn 1: times -j.
  out[at]! += factor * (turn === 1 ? im : re);
  out[at + 1]! += factor * (turn === 1 ? -re : im);
}

/** Adds what is reflected of one moment at a place (m); `k` in rad/m. */
export function addReflectedField(
  { position, direction, current, charge }: WireMoment,
  place: readonly number[],
  k: number,
  kernels: NearKernels,
  out: FieldSum,
): void {
  const [dx, dy] = [place[0]! - position[0], place[1]! - position[1]];
  const [tx, ty, tz] = direction;
  const along = tx * dx + ty * dy;
  kernels(Math.hypot(dx, dy), place[2]! + position[2], g);
  const a = k * vacuumImpedance;
  addTerm(current, a * tx, 0, 1, 0, out);
  addTerm(current, -a * tz * dx, 7, 1, 0, out);
  addTerm(current, a * ty, 0, 1, 2, out);
  addTerm(current, -a * tz * dy, 7, 1, 2, out);
  addTerm(current, a * tz, 5, 1, 4, out);
  addTerm(current, a * along, 7, 1, 4, out);
  const q = vacuumImpedance / k;
  addTerm(charge, q * dx, 4, 1, 0, out);
  addTerm(charge, q * dy, 4, 1, 2, out);
  addTerm(charge, q, 3, 1, 4, out);
  addTerm(current, tz * dy, 6, 0, 6, out);
  addTerm(current, ty, 7, 0, 6, out);
  addTerm(current, along * dy, 9, 0, 6, out);
  addTerm(current, -ty, 1, 0, 6, out);
  addTerm(current, tz * dy, 8, 0, 6, out);
  addTerm(current, -tz * dx, 6, 0, 8, out);
  addTerm(current, -tx, 7, 0, 8, out);
  addTerm(current, -along * dx, 9, 0, 8, out);
  addTerm(current, tx, 1, 0, 8, out);
  addTerm(current, -tz * dx, 8, 0, 8, out);
  addTerm(current, ty * dx - tx * dy, 2, 0, 10, out);
}
