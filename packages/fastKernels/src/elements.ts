/** Elements in the module's memory. */
import type { Kernels } from "@feedpath/engine";
import type { Room } from "./instance";

export type Elements = Parameters<Kernels["nearMoments"]>[0];

/** Address of one block of starts, directions, lengths and radii (assembly/elements.ts). */
export function putElements(room: Room, { count, start, direction, length, radius }: Elements): number {
  const block = new Float64Array(8 * count);
  block.set(start);
  block.set(direction, 3 * count);
  block.set(length, 6 * count);
  block.set(radius, 7 * count);
  return room.put(block);
}
