/**
 * Matches of closed form, checked by building them: with the published lengths or components in front of the load, the
 * engine must see the impedance they were made for ("matched impedance").
 */
import { type Complex, exactly, inputImpedance, partTwoPort } from "@feedpath/engine";
import type { Computed } from "../ledger/ledgerEntry";
import { type ComplexNumber, complexInput, input, numbersOf, type PublishedRow } from "../ledger/publishedRow";
import { losslessLine } from "./plainLine";

type Solution = Readonly<Record<string, number | string | Readonly<Record<string, number>>>>;

const real = (re: number): Complex => ({ re, im: 0 });
const inverse = ({ re, im }: Complex): Complex => ({ re: re / (re * re + im * im), im: -im / (re * re + im * im) });
const sum = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im });

/** What a lossless line of `turns` wavelengths makes of a load. */
const through = (z0: number, turns: number, load: Complex): Complex => inputImpedance(losslessLine(z0, turns), 1, load);

const solutionsOf = (row: PublishedRow): readonly Solution[] => row.value as unknown as readonly Solution[];

/** A line of d wavelengths from the load, then a shorted stub across it. */
export function shuntStub(row: PublishedRow): Computed {
  const z0 = input(row, "Z0");
  return Object.fromEntries(
    solutionsOf(row).map((solution, i) => {
      const line = through(z0, solution["d/lambda"] as number, complexInput(row, "ZL"));
      const stub = through(z0, solution["short_stub/lambda"] as number, real(0));
      return [`${i} / matched impedance`, inverse(sum(inverse(line), inverse(stub)))];
    }),
  );
}

/** Main line from the load, then the section of the other impedance. */
export function seriesSection(row: PublishedRow): Computed {
  const lengths = numbersOf(row);
  const turns = (name: string): number => (lengths.get(name) as number) / 360;
  const main = through(input(row, "Z0"), turns("l1_deg (load to section)"), complexInput(row, "ZL"));
  return { "matched impedance": through(input(row, "Z1"), turns("l2_deg (section)"), main) };
}

/** From a line of Z2: a section of Z1, then one of Z2, each as long as the other. */
export function twelfthWave(row: PublishedRow): Computed {
  const turns = numbersOf(row).get("each/lambda") as number;
  const [z1, z2] = [input(row, "Z1"), input(row, "Z2")];
  return { "matched impedance": through(z2, turns, through(z1, turns, real(z2))) };
}

const unitOf: Readonly<Record<string, number>> = { C_pF: 1e-12, L_nH: 1e-9 };

/** Impedance that a component of a path makes of a load. */
function behind(
  kind: "series" | "across",
  parts: Readonly<Record<string, number>>,
  frequency: number,
  load: ComplexNumber,
) {
  const [[name, value]] = Object.entries(parts) as [[string, number]];
  const quantity = exactly(value * unitOf[name]!);
  const component = {
    coil: name === "L_nH" ? quantity : null,
    capacitor: name === "C_pF" ? quantity : null,
    resistor: null,
    q: exactly(Number.POSITIVE_INFINITY),
  };
  const made = partTwoPort({ kind, name: kind, note: "", state: "in line", component }, frequency, {
    measured: {},
    reference: 50,
  });
  if (made.kind !== "two-port") throw new Error(made.reason);
  const { a, b, c, d } = made.twoPort;
  // With b or c zero and a, d one: Z = (load + b)/(c load + 1).
  if (a.re !== 1 || d.re !== 1) throw new Error("a single component has a = d = 1");
  return kind === "series" ? sum(load, b) : inverse(sum(inverse(load), c));
}

/** Two components, the one across at the load or at the line as the row says. */
export function twoElements(row: PublishedRow): Computed {
  const frequency = input(row, "f_Hz");
  return Object.fromEntries(
    solutionsOf(row).map((solution, i) => {
      const across = solution.shunt as Readonly<Record<string, number>>;
      const series = solution.series as Readonly<Record<string, number>>;
      const load = complexInput(row, "ZL");
      const seen =
        solution.topology === "shunt at load"
          ? behind("series", series, frequency, behind("across", across, frequency, load))
          : behind("across", across, frequency, behind("series", series, frequency, load));
      return [`${i} / matched impedance`, seen];
    }),
  );
}
