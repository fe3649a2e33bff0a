import type { BounceStudy } from "./study";

/** Four figures: as fine as anything drawn, and a third of the bytes. */
export const short = (x: number): number => (x === 0 ? 0 : Number(x.toPrecision(4)));
export const nanoseconds = (s: number): number => short(1e9 * s);

export const timesOf = ({ moments, stepped }: BounceStudy): number[] =>
  moments.map((m) => nanoseconds(m.step * stepped.timeStep));
export const placesOf = ({ plan, looked }: BounceStudy): number[] =>
  plan.places.map((p) => short((p / plan.sections) * looked.length));
