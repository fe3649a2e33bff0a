import { type Kernels, referenceKernels } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { fastKernels } from "./fastKernels";

type Terms = Parameters<Kernels["addReflectedTerms"]>[0];
type Table = NonNullable<Terms["tables"]["whole"]>;

/** Numbers from -1 to 1 that look random. */
const scattered = (count: number, seed: number): Float64Array =>
  Float64Array.from({ length: count }, (_, i) => Math.sin(seed + 7919 * i));

/** Height sums up to 3 m by polynomials, those above in columns; two pieces in u each. */
function table(steep: boolean, wavenumber: number): Table {
  const [termsInU, planes] = [5, steep ? 8 : 4];
  const band = (from: number, to: number, sums: Float64Array | null, termsInS: number) => ({
    ...{ from, to, sums, range: 3, edges: Float64Array.of(0, 1.3, 3), termsInU, termsInS },
    coefficients: scattered(2 * termsInU * termsInS * planes, from),
  });
  return { wavenumber, steep, bands: [band(0.1, 3, null, 6), band(3.5, 9, Float64Array.of(3.5, 5, 9), 3)] };
}

/** Points of level and steep wires, some low, and unknowns on a few of them each. */
function terms(count: number, size: number, steep: boolean, wavenumber: number): Terms {
  const heights = scattered(count, 3).map((x) => 2.3 + 2.2 * x);
  const [x, y] = [scattered(count, 4), scattered(count, 5)];
  const position = Float64Array.from({ length: 3 * count }, (_, i) =>
    i % 3 === 2 ? heights[(i - 2) / 3]! : 6 * (i % 3 === 0 ? x : y)[Math.floor(i / 3)]!,
  );
  const direction = new Float64Array(3 * count);
  for (let p = 0; p < count; p++) {
    const up = steep && p % 3 > 0 ? Math.sin(p) : 0;
    const level = Math.sqrt(1 - up * up);
    direction.set([level * Math.cos(7 * p), level * Math.sin(7 * p), up], 3 * p);
  }
  const first = Int32Array.from({ length: size + 1 }, (_, n) => 3 * n);
  const point = Int32Array.from({ length: 3 * size }, (_, a) => (5 * a) % count);
  const low = Uint8Array.from({ length: count }, (_, p) => p % 2);
  const [current, charge] = [scattered(3 * size, 6), scattered(3 * size, 7)];
  return {
    points: { count, position, direction, low, first, point, current, charge },
    tables: { lessImages: table(steep, wavenumber), whole: table(steep, wavenumber) },
    vectorFactor: 2.3,
    scalarFactor: 0.7,
  };
}

// Sums of fewer than 1e3 products of coefficients, polynomials, and weights below 1, over 4 pi R > 1: rounding.
const tolerance = 1e-12;

describe("fast reflected terms", () => {
  it.each([
    { count: 24, size: 31, steep: true, wavenumber: 0.3 },
    { count: 9, size: 4, steep: false, wavenumber: 0.3 },
    { count: 1, size: 1, steep: true, wavenumber: 0 },
  ])("are those of the readable twin: %o", ({ count, size, steep, wavenumber }) => {
    const asked = terms(count, size, steep, wavenumber);
    const [ours, theirs] = [fastKernels, referenceKernels].map((twin) => {
      const matrix = { size, re: scattered(size * size, 8), im: scattered(size * size, 9) };
      twin.addReflectedTerms(asked, matrix);
      return matrix;
    });
    const size0 = theirs!.re.reduce((most, v) => Math.max(most, Math.abs(v)), 1);
    theirs!.re.forEach((re, i) => {
      expect(Math.abs(ours!.re[i]! - re) / size0).toBeLessThan(tolerance);
      expect(Math.abs(ours!.im[i]! - theirs!.im[i]!) / size0).toBeLessThan(tolerance);
    });
  });

  it("tell of a table that is missing", () => {
    const asked = terms(4, 2, true, 0.3);
    const matrix = { size: 2, re: new Float64Array(4), im: new Float64Array(4) };
    for (const twin of [fastKernels, referenceKernels])
      expect(() => twin.addReflectedTerms({ ...asked, tables: { ...asked.tables, whole: null } }, matrix)).toThrow(
        /no table was given/,
      );
  });
});

describe("fast power of pairs", () => {
  it.each([true, false])("is that of the readable twin, steep %s", (steep) => {
    const { points, tables } = terms(23, 1, steep, 0);
    const plane = (seed: number) => ({ re: scattered(23, seed), im: scattered(23, seed + 0.5) });
    const moments = { points, current: plane(10), charge: plane(11) };
    const [ours, theirs] = [fastKernels, referenceKernels].map((twin) => twin.sumPairPower(moments, tables));
    expect(Math.abs(ours! - theirs!)).toBeLessThan(tolerance * 23 * 23);
  });
});
