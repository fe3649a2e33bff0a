/** Sums of current moments with the phases of plane waves, in the module. */
import type { Kernels } from "@feedpath/engine";
import { instance, Room } from "./instance";

type Points = Parameters<Kernels["sumWaves"]>[0];

/** assembly/waveSums.ts, in numbers. */
const numbersOfPoint = 9;
const numbersOfWave = 6;

function putPoints(room: Room, { count, position, direction, radius, moments }: Points): number {
  const block = new Float64Array(numbersOfPoint * count);
  for (let p = 0; p < count; p++) {
    const at = numbersOfPoint * p;
    for (let c = 0; c < 3; c++) {
      block[at + c] = position[3 * p + c]!;
      block[at + 3 + c] = direction[3 * p + c]!;
    }
    block[at + 6] = radius[p]! ** 2 / 4;
    block[at + 7] = moments.re[p]!;
    block[at + 8] = moments.im[p]!;
  }
  return room.put(block);
}

/** See Kernels.sumWaves. */
export const sumWaves: Kernels["sumWaves"] = (points, { radial, phi, upright }) => {
  const count = radial.length;
  const even = count + (count % 2);
  const asked = new Float64Array(3 * even);
  asked.set(radial);
  asked.set(phi, even);
  asked.set(upright, 2 * even);
  const room = new Room();
  const placed = [putPoints(room, points), points.count, room.put(asked), 8 * even, even] as const;
  const at = room.take(8 * numbersOfWave * even);
  instance().operations.sumWaves(...placed, at);
  const pairs = room.numbers(at, numbersOfWave * even);
  const out = new Float64Array(numbersOfWave * count);
  for (let w = 0; w < count; w++) {
    const pair = numbersOfWave * (w & ~1) + (w & 1);
    for (let i = 0; i < numbersOfWave; i++) out[numbersOfWave * w + i] = pairs[pair + 2 * i]!;
  }
  return out;
};
