import { type Kernels, referenceKernels } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { fastKernels } from "./fastKernels";
import { firstFree, instance, Room } from "./instance";

type Terms = Parameters<Kernels["addPairTerms"]>[0];
type Elements = Terms["tests"];

/** Numbers from -1 to 1 that look random. */
const scattered = (seed: number): number => Math.sin(1 + 7919 * seed);

/** A bent line of wires through the given corners, each cut into pieces that grow threefold from a share of its radius. */
function bent(corners: readonly (readonly [number, number, number])[], radii: readonly number[]): Elements {
  const [start, direction, length, radius]: [number[], number[], number[], number[]] = [[], [], [], []];
  corners.slice(1).forEach((to, w) => {
    const from = corners[w]!;
    const d = to.map((x, c) => x - from[c]!);
    const whole = Math.hypot(...d);
    const a = radii[w]!;
    for (let at = 0, step = a / 8; at < whole; ) {
      const size = at + 1.5 * step > whole ? whole - at : step;
      start.push(...from.map((x, c) => x + (d[c]! * at) / whole));
      direction.push(...d.map((x) => x / whole));
      length.push(size);
      radius.push(a);
      at += size;
      step = Math.min(3 * step, 0.7);
    }
  });
  const numbers = (values: number[]) => Float64Array.from(values);
  return {
    count: length.length,
    start: numbers(start),
    direction: numbers(direction),
    length: numbers(length),
    radius: numbers(radius),
  };
}

const structures = [1, 2, 3, 4].map((seed) =>
  bent(
    [0, 1, 2, 3, 4].map((i) => [
      4 * scattered(10 * seed + i),
      4 * scattered(10 * seed + i + 0.3),
      seed === 4 ? 0.05 : 3 + 2.9 * scattered(10 * seed + i + 0.6),
    ]),
    [1e-3, 1e-3, 5e-3, 2e-3].map((a) => (seed === 3 ? 10 * a : a)),
  ),
);

/** A hat on each node between two pieces. */
function hats(count: number): Terms["scatter"] {
  const ends = Array.from({ length: 2 * count }, (_, end) => (end + 1) >> 1).map((node) => node - 1);
  const held = ends.map((node) => node >= 0 && node < count - 1);
  const first = new Int32Array(2 * count + 1);
  held.forEach((is, end) => {
    first[end + 1] = first[end]! + (is ? 1 : 0);
  });
  const unknown = Int32Array.from(ends.filter((_, end) => held[end]));
  return { first, unknown, sign: new Float64Array(unknown.length).fill(1) };
}

const mirrored = (elements: Elements): Elements => {
  const flip = (values: Float64Array) => values.map((v, i) => (i % 3 === 2 ? -v : v));
  return { ...elements, start: flip(elements.start), direction: flip(elements.direction) };
};

const one = { re: 1, im: 0 };
const zero = { re: 0, im: 0 };
const [some, other] = [
  { re: -0.8, im: 0.1 },
  { re: 0.3, im: -0.6 },
];
const factors = {
  "the wires themselves": { image: false, level: one, upright: one, charge: one, cross: null },
  "images in soil": { image: true, level: zero, upright: some, charge: other, cross: some },
} as const;

describe("fast static moments", () => {
  // Closed forms are differences of numbers as large as x^3 over both lengths, x the farthest distance of the pair, tubes included, times a
  // logarithm of some ten over six and a handful of operations; everything else is rounding of the result.
  const rounding = (x: number, l: number, m: number): number => (20 * Number.EPSILON * x ** 3) / (l * m);

  it.each(structures.map((elements, i) => [i, elements] as const))(
    "are those of the readable twin: %i",
    (_, elements) => {
      for (const sources of [elements, mirrored(elements)]) {
        const [ours, theirs] = [fastKernels, referenceKernels].map((twin) => twin.nearMoments(elements, sources));
        expect(ours!.rowStart).toEqual(theirs!.rowStart);
        expect(ours!.column).toEqual(theirs!.column);
        for (let e = 0; e < elements.count; e++) {
          for (let pair = ours!.rowStart[e]!; pair < ours!.rowStart[e + 1]!; pair++) {
            const f = ours!.column[pair]!;
            const [l, m] = [elements.length[e]!, sources.length[f]!];
            const apart = Math.hypot(...[0, 1, 2].map((c) => elements.start[3 * e + c]! - sources.start[3 * f + c]!));
            const [a, b] = [ours!, theirs!].map((all) => all.moments.subarray(4 * pair, 4 * pair + 4));
            const size = Math.max(...b!.map(Math.abs));
            const off = Math.max(...a!.map((x, i) => Math.abs(x - b![i]!)));
            expect(off).toBeLessThan(
              1e-12 * size + rounding(apart + l + m + elements.radius[e]! + sources.radius[f]!, l, m),
            );
          }
        }
      }
    },
  );
});

describe("fast pair terms", () => {
  // Sums of up to a thousand terms, none larger than the largest entry: rounding.
  const tolerance = 1e-12;
  const cases = structures.flatMap((elements, i) =>
    Object.entries(factors).map(([name, how]) => ({ name: `${name}, structure ${i}`, elements, how })),
  );

  it.each(cases)("are those of the readable twin: $name", ({ elements, how: { image, ...strengths } }) => {
    const sources = image ? mirrored(elements) : elements;
    const near = referenceKernels.nearMoments(elements, sources);
    const scatter = hats(elements.count);
    const size = elements.count - 1;
    for (const wavenumber of [1e-3, 0.15, 0.6]) {
      const terms = { tests: elements, sources, near, scatter, wavenumber, factors: strengths };
      const [ours, theirs] = [fastKernels, referenceKernels].map((twin) => {
        const matrix = { size, re: new Float64Array(size * size).fill(1), im: new Float64Array(size * size).fill(-1) };
        twin.addPairTerms({ ...terms, vectorFactor: wavenumber, scalarFactor: 1 / wavenumber }, matrix);
        return matrix;
      });
      for (const part of ["re", "im"] as const) {
        const most = theirs![part].reduce((largest, x) => Math.max(largest, Math.abs(x)), 0);
        const off = ours![part].reduce((worst, x, i) => Math.max(worst, Math.abs(x - theirs![part][i]!)), 0);
        expect(off / most).toBeLessThan(tolerance);
      }
    }
  });
});

describe("the module's logarithm", () => {
  it("is that of the language", () => {
    const count = 4000;
    const x = Float64Array.from({ length: count }, (_, i) => Math.exp(300 * scattered(i) ** 5));
    const room = new Room();
    const [at, out] = [room.put(x), room.take(8 * count)];
    instance().operations.logarithmOfAll(at, count, out);
    room.numbers(out, count).forEach((y, i) => {
      expect(Math.abs(y - Math.log(x[i]!))).toBeLessThan(4e-16 * Math.max(1, Math.abs(Math.log(x[i]!))));
    });
  });
});

describe("the module's own memory", () => {
  it("ends below the operands", () => {
    expect(instance().operations.endOfKept()).toBeLessThanOrEqual(firstFree);
  });

  it("is not overrun by elements of no thickness to speak of: the call ends instead", () => {
    const elements = {
      count: 2,
      start: Float64Array.of(0, 0, 1, 0, 0, 1),
      direction: Float64Array.of(0, 0, 1, 1, 0, 0),
      length: Float64Array.of(80, 80),
      radius: Float64Array.of(1e-60, 1e-60),
    };
    expect(() => fastKernels.nearMoments(elements, elements)).toThrow("unreachable");
    expect(fastKernels.nearMoments(structures[0]!, structures[0]!).column.length).toBeGreaterThan(0);
  });
});
