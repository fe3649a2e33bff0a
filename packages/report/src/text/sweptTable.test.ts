import type { Table } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { sweptRows } from "./sweptTable";

const table = (unit: string, values: number[]): Table => ({
  name: "impedanceCompromise",
  axis: "characteristicImpedance",
  columns: {
    characteristicImpedance: { unit: "ohm", values: values.map((_, i) => 10 * (i + 1)) },
    peakPower: { unit, values },
  },
});

const shown = (unit: string, values: number[]) => {
  const { columns, rows } = sweptRows(table(unit, values)).table;
  return { unit: columns[1]!.unit, cells: rows.map((row) => row[1]) };
};

describe("a swept table", () => {
  it("tells large watts and volts in thousands and millions, three figures each", () => {
    expect(shown("W", [11_410_170, 284_110.4])).toEqual({ unit: "kW", cells: ["11410", "284"] });
    expect(shown("W", [5_076_879_907, 2.5e6])).toEqual({ unit: "MW", cells: ["5077", "2.5"] });
    expect(shown("V", [901_277, 27_189])).toEqual({ unit: "kV", cells: ["901", "27.2"] });
    expect(shown("V", [14_127, 8677])).toEqual({ unit: "V", cells: ["14127", "8677"] });
  });

  it("gives watts a decimal so that they add up, except where all are stated whole", () => {
    expect(shown("W", [94.9, 5.1])).toEqual({ unit: "W", cells: ["94.9", "5.1"] });
    expect(shown("W", [1800, 950, 430])).toEqual({ unit: "W", cells: ["1800", "950", "430"] });
  });
});
