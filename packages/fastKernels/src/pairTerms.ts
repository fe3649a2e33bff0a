/** Mixed-potential terms between elements, in the module. */
import type { Kernels } from "@feedpath/engine";
import { putElements } from "./elements";
import { instance, Room } from "./instance";
import { addTriangle } from "./triangle";

type Terms = Parameters<Kernels["addPairTerms"]>[0];

/** assembly/pairMoments.ts, `pointBytes`. */
const pointBytes = 288;

function constantsOf({ wavenumber, vectorFactor, scalarFactor, factors }: Terms): Float64Array {
  const { level, upright, charge, cross } = factors;
  return Float64Array.of(
    ...[wavenumber, vectorFactor, scalarFactor, level.re, level.im, upright.re, upright.im, charge.re, charge.im],
    ...(cross ? [vectorFactor * cross.re, vectorFactor * cross.im] : [0, 0]),
  );
}

/** See Kernels.addPairTerms. */
export const addPairTerms: Kernels["addPairTerms"] = (terms, matrix) => {
  const { tests, sources, near, scatter, orbits } = terms;
  const { size } = matrix;
  const room = new Room();
  const t = putElements(room, tests);
  const placed = [t, tests.count, sources === tests ? t : putElements(room, sources), sources.count] as const;
  const pairs = [room.put(near.rowStart), room.put(near.column), room.put(near.moments)] as const;
  const ends = [room.put(scatter.first), room.put(scatter.unknown), room.put(scatter.sign)] as const;
  const images = orbits ? ([room.put(orbits.first), room.put(orbits.size)] as const) : ([0, 0] as const);
  const work = room.take(pointBytes * (tests.count + sources.count));
  const constants = room.put(constantsOf(terms));
  const [re, im] = [room.take(8 * size * size), room.take(8 * size * size)];
  for (const part of [re, im]) room.numbers(part, size * size).fill(0);
  instance().operations.pairTerms(...placed, ...pairs, ...ends, ...images, constants, work, size, re, im);
  addTriangle(room.numbers(re, size * size), matrix.re, size);
  addTriangle(room.numbers(im, size * size), matrix.im, size);
};
