import { describe, expect, it } from "vitest";
import { instance, Room } from "./instance";

describe("sine and cosine of the module", () => {
  it.each([1, 10, 1e3, 1e5])("are those of the language up to %d rad", (most) => {
    const count = 2000;
    const x = Float64Array.from({ length: count }, (_, i) => most * Math.sin(1 + 7919 * i));
    const room = new Room();
    const [at, sines, cosines] = [room.put(x), room.take(8 * count), room.take(8 * count)];
    instance().operations.sinCosOfAll(at, count, sines, cosines);
    const off = (address: number, truth: (x: number) => number) =>
      room.numbers(address, count).reduce((worst, y, i) => Math.max(worst, Math.abs(y - truth(x[i]!))), 0);
    expect(off(sines, Math.sin)).toBeLessThan(2e-16 + 1e-16 * most);
    expect(off(cosines, Math.cos)).toBeLessThan(2e-16 + 1e-16 * most);
  });
});
