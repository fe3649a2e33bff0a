import { exactly, type LineEntry, type RoundConductor, within } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { toHtml } from "../html/toHtml";
import { arriving, compareLines, type ListedLine, ownFamily } from "./compareLines";
import { linesDocument } from "./linesDocument";
import { linesTable, lossTable } from "./linesTable";
import { linesList, linesText } from "./linesText";
import { lossStudy } from "./lossStudy";

const sheet: LineEntry = {
  designation: "garden cable",
  about: "<b>Invented</b>, half an inch thick.",
  model: {
    kind: "data sheet",
    side: "coaxial",
    impedance: within(50, 2),
    velocityFactor: exactly(0.66),
    loss: [{ frequency: 1e7, decibelsPerMetre: within(0.02, 0.002) }],
  },
  build: null,
  jacketDiameter: 0.0127,
  ratings: { voltage: exactly(1000), weight: exactly(0.1) },
  price: { perMetre: 1.5, money: "EUR" },
  sources: [{ value: "everything", source: "a test", status: "invented" }],
};
const wire: RoundConductor = {
  form: "solid",
  layers: [{ metal: { name: "copper", conductivity: 58e6, permeability: 1 }, outerRadius: 1e-3 }],
  holeRadius: 0,
  effectiveRadiusRatio: 1,
  resistanceFactor: 1,
};
const pair: LineEntry = {
  designation: "two wires",
  model: {
    kind: "parallel-wire",
    wire,
    spacing: exactly(0.15),
    dielectric: { name: "air", permittivity: 1, lossTangent: 0 },
  },
  build: null,
  sources: [],
};
const lines: readonly ListedLine[] = [
  { entry: sheet, family: ownFamily, own: true },
  { entry: pair, family: "open-wire line", own: false },
];
const conditions = { at: 1e7, frequencies: [1e7, 4e7], length: 50 };
const comparison = compareLines(lines, conditions);

describe("lines beside each other", () => {
  it("gives the sheet's loss at its point, and twice of it at four times the frequency", () => {
    const [garden] = comparison.rows;
    expect(garden?.loss).toMatchObject({ value: expect.closeTo(0.02, 6), high: expect.closeTo(0.022, 6) });
    // One point fixes the conductors alone: the loss goes with the root of the frequency, but for their reactance.
    expect(garden!.losses[1]!.value / 0.02).toBeCloseTo(2, 1);
    expect(arriving(0.02, 50)).toBeCloseTo(100 * 10 ** -0.1, 9);
  });

  it("sets a table with watts before decibels, and a dash for what is not known", () => {
    const { columns, rows } = linesTable(comparison, "metric");
    const cell = (row: number, name: string) => rows[row]?.[columns.findIndex((column) => column.name === name)];
    expect(cell(0, "of 100 W after 50 m")).toBe("79.4");
    expect(cell(0, "loss of 50 m")).toBe("1");
    expect(cell(0, "loss")).toBe("2");
    expect(cell(0, "thickness")).toBe("12.7");
    expect(cell(0, "price")).toBe("1.5 EUR");
    expect(cell(1, "impedance")).toBe("601");
    expect(cell(1, "voltage")).toBe("–");
    expect(lossTable(comparison, "metric").columns.map(({ name }) => name)).toEqual(["line", "10 MHz", "40 MHz"]);
  });

  it("reads in feet and pounds where that is asked", () => {
    const { columns, rows } = linesTable(comparison, "imperial");
    const cell = (name: string) => rows[0]?.[columns.findIndex((column) => column.name === name)];
    expect(cell("thickness")).toBe("0.5");
    expect(cell("loss")).toBe("0.61");
    // 0.1 kg/m over 0.4536 kg/lb, 30.48 m.
    expect(cell("weight")).toBe("6.7");
  });

  it("tells all in a terminal, within its width", () => {
    const list = linesList(comparison, "metric");
    expect(list).toContain(`\n${ownFamily}\n  garden cable`);
    const text = linesText(comparison, "metric");
    expect(text).toContain("everything: a test (invented)");
    expect(text).toContain("impedance 48");
    expect(Math.max(...[...list.split("\n"), ...text.split("\n")].map((one) => one.length))).toBeLessThanOrEqual(80);
  });

  it("makes a page that fetches nothing and escapes what a file says", () => {
    const html = toHtml(
      linesDocument({ comparison, units: "metric", figure: null, narrowFigure: null, worked: "Worked out by a test." }),
    );
    expect(html).toContain("&lt;b&gt;Invented");
    expect(html).toContain("feed lines · ");
    expect(html).not.toMatch(/<script|https?:/);
  });

  it("studies losses over a span that holds the frequency looked at", () => {
    const study = lossStudy(lines, { at: 2e9, length: 50 }, "imperial");
    expect(study.frequencies.at(-1)).toBe(2e9);
    expect(study.told).toEqual({ says: "164 ft", length: 50 });
    expect(study.lines[0]?.loss).toHaveLength(study.frequencies.length);
  });
});
