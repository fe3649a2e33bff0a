import { describe, expect, it } from "vitest";
import { modifiedBessel } from "./besselModified";
import { add, type Complex, complex, exponential, magnitude, multiply, reciprocal, scale, subtract } from "./complex";

/**
 * Rows: Re z, Im z, then e^(-z) I0, e^(-z) I1, e^z K0, e^z K1 as re, im.
 * Source: computed with 40 digits by mpmath 1.3.0 (besseli, besselk), rounded to doubles.
 */
const published: readonly (readonly number[])[] = [
  [0.01, 0, 0.9900745851497075, 0.0, 0.004950311047118276, 0.0, 4.768694028544462, 0.0, 100.97864845824004, 0.0],
  [
    0.3, 0.4, 0.686996016901319, -0.2426245173623351, 0.15582488323104654, 0.09712687700886127, 1.4548832444677435,
    -0.5617024433914763, 1.944908624928472, -1.7203862945078146,
  ],
  [
    0, 1.5, 0.036205257234694484, -0.510545536561804, 0.5565388694836978, 0.03946686727781064, 0.7594677245311191,
    -0.6561155645569537, 0.5840360874741828, -0.9200223640573669,
  ],
  [
    1.2, -1.5, 0.251354209616009, 0.16921671262919608, 0.2678465158922327, 0.038756894977885724, 0.7967358995793816,
    0.34589013426428716, 0.8643189335342734, 0.5439430663380654,
  ],
  [
    1.9, 0.5, 0.3075084750846061, -0.04855109194912697, 0.21919445645777594, -0.0072630539553206, 0.8435126550002245,
    -0.09936478384526617, 1.0283265972240927, -0.16812743731834523,
  ],
  [2.1, 0, 0.29956309452628194, 0.0, 0.21374767210633228, 0.0, 0.8230171525316621, 0.0, 1.0023680527405792, 0.0],
  [
    0, 2.404825557695773, 4.524424026600402e-17, 4.1044610152963284e-17, 0.3488136428907574, -0.3845037925368176,
    0.5932469574955904, -0.5381809916948497, 0.49553692667449906, -0.6674508666848156,
  ],
  [
    1, 3, 0.1868962878126694, -0.11068827331095916, 0.17888440546917683, -0.13525984427624874, 0.575929036147085,
    -0.3866196655990594, 0.5539577254347461, -0.49023485800527555,
  ],
  [
    5, -5, 0.13949993545091302, 0.06006857915941823, 0.13575038884858673, 0.0497227644930797, 0.43207564347829847,
    0.17324024391515305, 0.44532825581206464, 0.20249714369361826,
  ],
  [
    0, 20.5, -0.009157524740698704, -0.11473207921178576, 0.1358227328013446, -0.01084090905109174, 0.19689401065566223,
    -0.19451030508350692, 0.19221100718074108, -0.19936740601243072,
  ],
  [
    17, 17, 0.07532748777456709, -0.031536481795622906, 0.07469104766556693, -0.029948406428605343, 0.23563360651386492,
    -0.0966180951515814, 0.23769686624134087, -0.10145412080140587,
  ],
  [
    24.9, 0.5, 0.08034692678164669, -0.000815059003290375, 0.07871764794823558, -0.0007654505929354912,
    0.2498950892568822, -0.0024845033390967996, 0.2548616392038607, -0.0026327041581926443,
  ],
  [
    0, 25.2, 0.1188876887710334, -0.008008319368427488, -0.006910375750102944, -0.10258814161534323,
    0.17739602464268253, -0.17564623768689225, 0.1739471783624672, -0.17919911093126492,
  ],
  [
    3, -30, 0.05353169025055788, 0.04908254092149148, 0.054572426572745414, 0.04794172547203342, 0.1697863521355743,
    0.15239002202603977, 0.16757926065829717, 0.15545820432365873,
  ],
  [
    40, 40, 0.049049107784363256, -0.02040779077251558, 0.04887093159586514, -0.01997175561603733, 0.15381061786386402,
    -0.06343253209398682, 0.15437785554456115, -0.06478433879083585,
  ],
  [
    700, 700, 0.0117149811440876, -0.004853730436518269, 0.01171253131801652, -0.004847811544643275,
    0.03679984906536147, -0.015239150027910302, 0.036807551254053154, -0.01525773069283846,
  ],
  [
    0, 1000, 0.013939513662705617, -0.020495603657024145, 0.003909744377226182, 0.0026591036827233387,
    0.02802845722894571, -0.028021450994030417, 0.028014450010503043, -0.028035468721817242,
  ],
];

const pair = (row: readonly number[], at: number): Complex => complex(row[at] ?? Number.NaN, row[at + 1] ?? Number.NaN);

/** Trapezoid over the theta of e^(z cos theta)/pi, spectrally accurate: A&S 9.6.16 and 9.6.19, scaled by e^(-z). */
function iByQuadrature(z: Complex, order: 0 | 1): Complex {
  const points = 200;
  let sum = complex(0);
  for (let k = 0; k < points; k++) {
    const theta = (Math.PI * (k + 0.5)) / points;
    const weight = order === 0 ? 1 : Math.cos(theta);
    sum = add(sum, scale(exponential(scale(z, Math.cos(theta) - 1)), weight / points));
  }
  return sum;
}

/** Trapezoid over t of e^(-z cosh t) cosh(nu t): A&S 9.6.24, scaled by e^z; needs Re z well above 0. */
function kByQuadrature(z: Complex, order: 0 | 1): Complex {
  const step = 0.02;
  let sum = complex(0.5 * step);
  for (let t = step; t < 6; t += step) {
    const weight = order === 0 ? step : step * Math.cosh(t);
    sum = add(sum, scale(exponential(scale(z, 1 - Math.cosh(t))), weight));
  }
  return sum;
}

const distance = (a: Complex, b: Complex): number => magnitude(subtract(a, b));

describe("modified Bessel functions", () => {
  it.each(published)("agrees with 40-digit arithmetic at %f + j %f", (...row) => {
    const found = modifiedBessel(complex(row[0] ?? 0, row[1]));
    const iSize = Math.hypot(magnitude(pair(row, 2)), magnitude(pair(row, 4)));
    expect(distance(found.i0, pair(row, 2)) / iSize).toBeLessThan(1e-14);
    expect(distance(found.i1, pair(row, 4)) / iSize).toBeLessThan(1e-14);
    expect(distance(found.k0, pair(row, 6)) / magnitude(pair(row, 6))).toBeLessThan(1e-14);
    expect(distance(found.k1, pair(row, 8)) / magnitude(pair(row, 8))).toBeLessThan(1e-14);
  });

  it.each([
    [0.8, 0.7],
    [3, 4],
    [20, -9],
    [30, 12],
  ])("agrees with quadrature of the integral representations at %f + j %f", (re, im) => {
    const z = complex(re, im);
    const found = modifiedBessel(z);
    expect(distance(found.i0, iByQuadrature(z, 0))).toBeLessThan(2e-14);
    expect(distance(found.i1, iByQuadrature(z, 1))).toBeLessThan(2e-14);
    expect(distance(found.k0, kByQuadrature(z, 0))).toBeLessThan(2e-14);
    expect(distance(found.k1, kByQuadrature(z, 1))).toBeLessThan(4e-14);
  });

  it("keeps the Wronskian I0 K1 + I1 K0 = 1/z across all seams, also where I is summed by series", () => {
    for (const size of [0.001, 1.999, 2.001, 24.99, 25.01, 1e4]) {
      for (const angle of [-1.57, -0.8, 0, 0.4, 1.2, 1.57]) {
        const z = scale(complex(Math.cos(angle), Math.sin(angle)), size);
        const f = modifiedBessel(z);
        const wronskian = add(multiply(f.i0, f.k1), multiply(f.i1, f.k0));
        expect(distance(wronskian, reciprocal(z)) * size).toBeLessThan(1e-14);
      }
    }
  });

  it("refuses the left half plane and the pole", () => {
    expect(() => modifiedBessel(complex(-1, 2))).toThrow(/Re z >= 0/);
    expect(() => modifiedBessel(complex(0, 0))).toThrow(/not 0/);
  });
});
