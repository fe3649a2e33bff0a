/** What the soil reflects between sample points, in the module. */
import type { Kernels } from "@feedpath/engine";
import { instance, Room } from "./instance";
import { putPoints, type Terms } from "./tables";
import { addTriangle } from "./triangle";

type Matrix = Parameters<Kernels["addReflectedTerms"]>[1];

/** See Kernels.addReflectedTerms. */
export function addReflectedTerms({ points, tables, vectorFactor, scalarFactor }: Terms, matrix: Matrix): void {
  const { size } = matrix;
  const { first, point, current, charge, count } = points;
  const room = new Room();
  const placed = putPoints(room, points, tables);
  const columns = [size, room.put(first), room.put(point), room.put(current), room.put(charge)] as const;
  const work = room.take(32 * count * (count + 1));
  const [re, im] = [room.take(8 * size * size), room.take(8 * size * size)];
  instance().operations.reflectedTerms(...placed, ...columns, vectorFactor, scalarFactor, work, re, im);
  addTriangle(room.numbers(re, size * size), matrix.re, size);
  addTriangle(room.numbers(im, size * size), matrix.im, size);
}

/** Complex numbers side by side. */
function putPairs(room: Room, { re, im }: { readonly re: Float64Array; readonly im: Float64Array }): number {
  const pairs = new Float64Array(2 * re.length);
  re.forEach((x, i) => {
    pairs[2 * i] = x;
    pairs[2 * i + 1] = im[i]!;
  });
  return room.put(pairs);
}

/** See Kernels.sumPairPower. */
export const sumPairPower: Kernels["sumPairPower"] = ({ points, current, charge }, tables) => {
  const room = new Room();
  const placed = putPoints(room, points, tables);
  return instance().operations.pairPower(...placed, putPairs(room, current), putPairs(room, charge));
};
