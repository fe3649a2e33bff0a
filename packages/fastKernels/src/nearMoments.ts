/** Static moments of close pairs, in the module. */
import type { Kernels } from "@feedpath/engine";
import { putElements } from "./elements";
import { instance, Room } from "./instance";

/** See Kernels.nearMoments. */
export const nearMoments: Kernels["nearMoments"] = (tests, sources) => {
  const { operations } = instance();
  const room = new Room();
  const t = putElements(room, tests);
  const placed = [t, tests.count, sources === tests ? t : putElements(room, sources), sources.count] as const;
  const rowStart = room.take(4 * (tests.count + 1));
  const work = room.take(24 * (tests.count + sources.count));
  const pairs = operations.findNear(...placed, rowStart, 0, work);
  const [column, moments] = [room.take(4 * pairs), room.take(32 * pairs)];
  operations.findNear(...placed, rowStart, column, work);
  operations.nearMoments(...placed, rowStart, column, moments);
  return {
    rowStart: room.integers(rowStart, tests.count + 1).slice(),
    column: room.integers(column, pairs).slice(),
    moments: room.numbers(moments, 4 * pairs).slice(),
  };
};
