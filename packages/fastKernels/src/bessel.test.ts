import { describe, expect, it } from "vitest";
import { instance, Room } from "./instance";

/** Numbers from -1 to 1 that look random. */
const scattered = (count: number): Float64Array =>
  Float64Array.from({ length: count }, (_, i) => Math.sin(1 + 7919 * i));

/** J_n(z), z = x + jy, by the trapezoid rule on the mean of cos(n t - z sin t) (DLMF 10.9.2); re and im. */
function besselJ(n: number, x: number, y: number): readonly [number, number] {
  const count = 60 + 2 * Math.ceil(Math.hypot(x, y));
  let [re, im] = [0, 0];
  for (let i = 0; i < count; i++) {
    const t = (2 * Math.PI * i) / count;
    const [a, b] = [n * t - x * Math.sin(t), -y * Math.sin(t)];
    re += Math.cos(a) * Math.cosh(b);
    im -= Math.sin(a) * Math.sinh(b);
  }
  return [re / count, im / count];
}

describe("exponentials of the module", () => {
  it("are those of the language", () => {
    const x = scattered(2000).map((v, i) => v * (i % 2 ? 690 : 2));
    const room = new Room();
    const [at, out] = [room.put(x), room.take(x.byteLength)];
    instance().operations.exponentialOfAll(at, x.length, out);
    room.numbers(out, x.length).forEach((y, i) => {
      expect(Math.abs(y / Math.exp(x[i]!) - 1)).toBeLessThan(1e-15);
    });
  });

  it("of what has decayed beyond the least number are nothing", () => {
    const room = new Room();
    const [at, out] = [room.put(Float64Array.of(-1e5, -800)), room.take(16)];
    instance().operations.exponentialOfAll(at, 2, out);
    for (const y of room.numbers(out, 2)) expect(y).toBeLessThan(1e-300);
  });
});

describe("Bessel functions of the module", () => {
  it.each([0.3, 3, 30, 300])("are those of their integral up to %d", (most) => {
    const x = Float64Array.of(0, most, ...scattered(400).map((v) => Math.abs(v) * most));
    const room = new Room();
    const [at, zeroth, first] = [room.put(x), room.take(x.byteLength), room.take(x.byteLength)];
    instance().operations.besselOfAll(at, x.length, zeroth, first);
    const [j0, j1] = [room.numbers(zeroth, x.length), room.numbers(first, x.length)];
    x.forEach((v, i) => {
      expect(Math.abs(j0[i]! - besselJ(0, v, 0)[0])).toBeLessThan(1e-14);
      if (v > 0.01) expect(Math.abs(j1[i]! * v - besselJ(1, v, 0)[0])).toBeLessThan(1e-14);
      else expect(Math.abs(j1[i]! - 0.5)).toBeLessThan(1e-5);
    });
  });

  it("of complex numbers are those of their integral", () => {
    const count = 400;
    const radius = scattered(count).map((v) => 60 * v * v);
    const im = scattered(count).map((v, i) => Math.min(8, radius[i]!) * v);
    const re = im.map((y, i) => Math.sqrt(Math.max(0, radius[i]! ** 2 - y * y)));
    const room = new Room();
    const [reAt, imAt, out] = [room.put(re), room.put(im), room.take(32 * count)];
    instance().operations.besselComplexOfAll(reAt, imAt, count, out, 8 * count);
    const all = room.numbers(out, 4 * count);
    for (let i = 0; i < count; i++) {
      const [x, y] = [re[i]!, im[i]!];
      const envelope = Math.exp(Math.abs(y)) / Math.sqrt(1 + Math.hypot(x, y));
      const [a, b] = besselJ(0, x, y);
      const [c, d] = [all[2 * count + i]!, all[3 * count + i]!];
      const [p, q] = besselJ(1, x, y);
      expect(Math.hypot(all[i]! - a, all[count + i]! - b) / envelope).toBeLessThan(1e-10);
      expect(Math.hypot(c * x - d * y - p, c * y + d * x - q) / envelope).toBeLessThan(1e-10);
    }
  });
});
