/** An answer about lengths, made by hand. Every number is invented: none is a result and none may be quoted. */
import type { Answer, Column, Table } from "@feedpath/engine";
import { exampleAnswer } from "./exampleAnswer";

const steps = (from: number, to: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));

const column = (unit: string, values: number[]): Column => ({ unit, values });

function lengthsTable(): Table {
  const length = steps(19, 21.4, 49);
  return {
    name: "trim",
    axis: "length",
    columns: {
      length: column("m", length),
      swrAtTransmitter: column(
        "1",
        length.map((l) => Math.sqrt(1.3 ** 2 + (1.9 * (l - 20.35)) ** 2)),
      ),
      swrAtFeedPoint: column(
        "1",
        length.map((l) => Math.sqrt(1.4 ** 2 + (2.4 * (l - 20.38)) ** 2)),
      ),
      feedPointResistance: column(
        "ohm",
        length.map((l) => 60 + 10 * (l - 19)),
      ),
      feedPointReactance: column(
        "ohm",
        length.map((l) => 80 * (l - 20.5)),
      ),
    },
  };
}

function ladder(shares: Readonly<Record<string, number>>): Table {
  const measured = steps(6.7, 7.5, 17);
  const change = (f: number) => 100 * (145 / 7.1 - 145 / f);
  const columns: Record<string, Column> = { measuredLowest: column("MHz", measured) };
  for (const [name, share] of Object.entries(shares)) {
    columns[name] = column(
      "cm",
      measured.map((f) => share * change(f)),
    );
    columns[`${name}InInches`] = column(
      "in",
      measured.map((f) => (share * change(f)) / 2.54),
    );
  }
  return { name: "ladder", axis: "measuredLowest", columns };
}

/** `unequal`: an off-centre dipole, whose legs change in proportion. */
export function exampleTrim(unequal = false): Answer {
  const base = exampleAnswer();
  const shares: Readonly<Record<string, number>> = unequal
    ? { changeOfFirstLeg: 0.34, changeOfSecondLeg: 0.66 }
    : { changeAtEachEnd: 0.5 };
  return {
    ...base,
    question: "trim",
    asked: "How long should it be, and how much do I cut?",
    frequency: 7.1e6,
    parameters: {
      judged: "lengthForLowestSwr",
      measuredLowest: unequal ? null : 6.95,
      trimmedAt: unequal ? "the first leg; the second leg" : "each leg",
    },
    values: {
      ...base.values,
      presentLength: { value: 20.1, unit: "m" },
      lengthForLowestSwr: { value: 20.35, unit: "m" },
      lengthForLowestSwrAtFeedPoint: { value: 20.38, unit: "m" },
      lengthForResonance: { value: 20.5, unit: "m" },
    },
    tables: [ladder(shares), lengthsTable(), ...base.tables],
  };
}
