import { describe, expect, it } from "vitest";
import type { Answer, Refusal, Table } from "../../answer/answer";
import { createSolutionMemory } from "../../chain/solutionMemory";
import type { LineEntry } from "../../lines/lineModel";
import { exactly } from "../../quantity/quantity";
import type { Station } from "../../station/station";
import { linePart, pathOf, plainLine, plainStation } from "../../testing/plainStation";
import { watts } from "../watts/run";
import { line } from "./run";

const kept = createSolutionMemory();

const entry = (designation: string, impedance: number, decibels: number, more: Partial<LineEntry> = {}): LineEntry => ({
  ...plainLine(impedance),
  designation,
  model: {
    kind: "data sheet",
    side: "coaxial",
    impedance: exactly(impedance),
    velocityFactor: exactly(0.66),
    loss: [{ frequency: 7e6, decibelsPerMetre: exactly(decibels) }],
  },
  ...more,
});
const euro = (perMetre: number) => ({ price: { perMetre, money: "EUR" } });

const better = entry("thick line", 50, 0.005, { ...euro(4), ratings: { weight: exactly(0.4), voltage: exactly(50) } });
const worse = entry("thin line", 50, 0.06, { ...euro(0.4), ratings: { weight: exactly(0.03) } });
const other = entry("75-ohm line", 75, 0.015);
const pair = entry("300-ohm pair", 300, 0.01);
const lines: readonly LineEntry[] = [
  better,
  worse,
  other,
  { ...pair, model: { ...pair.model, side: "balanced" } as LineEntry["model"] },
];

type Run = typeof line.run;

function run(question: { run: Run }, station: Station, parameters: Parameters<Run>[1] = {}): Answer | Refusal {
  const steps = question.run(station, parameters, { program: "", catalogue: "", fileHash: "", lines, kept });
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

function answered(station: Station, parameters: Parameters<Run>[1] = {}, question: { run: Run } = line): Answer {
  const answer = run(question, station, parameters);
  if ("refused" in answer) throw new Error(answer.refused.why);
  return answer;
}

const value = (answer: Answer, name: string): number => {
  const found = answer.values[name];
  if (!found || !("value" in found) || found.value === null) throw new Error(`no value ${name}`);
  return found.value;
};
const table = (answer: Answer, name: string): Table => answer.tables.find((t) => t.name === name)!;
const cell = (answer: Answer, tableName: string, label: string, column: string): number | null => {
  const found = table(answer, tableName);
  return found.columns[column]!.values[found.labels!.indexOf(label)]!;
};

const usual = plainStation();
const lossy = plainStation({ path: pathOf([linePart("line 1", 28, worse)]) });

describe("line", () => {
  it("brings with every line what that line brings when it lies there", () => {
    const answer = answered(usual);
    for (const one of [better, worse, other]) {
      const there = answered(plainStation({ path: pathOf([linePart("line 1", 28, one)]) }), {}, watts);
      expect(cell(answer, "lines", one.designation, "wattsIntoAntenna")).toBeCloseTo(
        value(there, "powerIntoAntenna"),
        9,
      );
      expect(cell(answer, "lines", one.designation, "lossAtLoad")).toBeCloseTo(value(there, "lineLoss"), 9);
    }
    expect(value(answer, "wattsOfPresent")).toBeCloseTo(value(answer, "powerIntoAntenna"), 9);
  });

  it("ranks by watts, never by SWR: the line of most loss comes last though its SWR is lowest", () => {
    const answer = answered(usual);
    const { labels, columns } = table(answer, "lines");
    const swr = columns.swrSeen!.values.map(Number);
    expect(labels![0]).toBe("thick line");
    expect(labels!.at(-1)).toBe("thin line");
    expect(Math.min(...swr)).toBe(swr.at(-1));
    const into = columns.wattsIntoAntenna!.values.map(Number);
    expect(into).toEqual([...into].sort((a, b) => b - a));
  });

  it("by price puts what is cheap behind where it brings half a decibel less, and what has no price last of its kind", () => {
    const { labels } = table(answered(usual, { matters: "price" }), "lines");
    expect(labels!.indexOf("thick line")).toBeLessThan(labels!.indexOf("thin line"));
    expect(labels!.indexOf("thick line")).toBeLessThan(labels!.indexOf("75-ohm line"));
    expect(labels!.at(-1)).toBe("thin line");
  });

  it("ranks by watts and says so where nothing is known by what was asked", () => {
    const answer = answered(usual, { matters: "bend" });
    expect(answer.parameters.matters).toBe("watts");
    expect(answer.next).toContain("No line has a least bend here");
  });

  it("prices the run and each decibel it brings", () => {
    const answer = answered(lossy, { candidates: "thick line" });
    const gained = cell(answer, "lines", "thick line", "gained")!;
    expect(cell(answer, "lines", "thick line", "price")).toBeCloseTo(28 * 4, 9);
    expect(cell(answer, "lines", "thick line", "pricePerDecibel")).toBeCloseTo((28 * 4) / gained, 9);
    expect(cell(answer, "lines", "thin line", "pricePerDecibel")).toBeNull();
  });

  it("does not propose a line whose voltage would be over its limit, and proposes the next", () => {
    const answer = answered(lossy);
    expect(cell(answer, "lines", "thick line", "voltageUsed")).toBeGreaterThan(100);
    expect(answer.parameters.proposal).toBe("75-ohm line");
    expect(answer.verdict).toBe("workable");
  });

  it("shows a 75-ohm line without loss at 1 to 2.25 by its length, with 50 ohm at its end", () => {
    const bare = entry("75-ohm bare", 75, 1e-9);
    const answer = answered(plainStation({ path: pathOf([linePart("line 1", 28, bare)]) }));
    expect(value(answer, "lowestSwrOnRated")).toBeGreaterThanOrEqual(1);
    // 48 steps over half a wave: the ends are met within a step.
    expect(value(answer, "lowestSwrOnRated")).toBeLessThan(1.06);
    expect(value(answer, "highestSwrOnRated")).toBeGreaterThan(2.24);
    expect(value(answer, "highestSwrOnRated")).toBeLessThanOrEqual(2.25 + 1e-9);
    expect(answer.mistakenIdea?.idea).toContain("always gives 1.5");
  });

  it("looks at other lengths of an aged line as aged as it is", () => {
    const aged = { ...linePart("line 1", 28, other), excessLoss: exactly(0.05) };
    const answer = answered(plainStation({ path: pathOf([aged]) }));
    expect(answer.parameters.lengthOf).toBe("75-ohm line");
    expect(answer.mistakenIdea?.refutation).toContain("this line");
    const { length, wattsIntoAntenna } = table(answer, "lineLength").columns;
    const into = value(answer, "powerIntoAntenna");
    const now = length!.values.findIndex((l) => Math.abs(l! - 28) < 1e-9);
    expect(wattsIntoAntenna!.values[now]).toBeCloseTo(into, 9);
    expect(cell(answer, "lines", "new 75-ohm line", "gained")).toBeGreaterThan(1);
    expect(cell(answer, "matchedEnds", "plain, 7.1 MHz", "wattsIntoAntenna")).toBeCloseTo(into, 9);
  });

  it("doubles the impedance of two lines side by side and keeps their loss", () => {
    const answer = answered(usual);
    const { labels, columns } = table(answer, "sideBySide");
    const at = labels!.indexOf("two thick line");
    expect(columns.impedance!.values[at]).toBeCloseTo(100, 6);
    expect(columns.matchedLoss!.values[at]).toBeCloseTo(28 * 0.005 * Math.sqrt(7.1 / 7), 3);
  });

  it("puts two conversions with a loss beside a pair between coaxial joints, and lists them", () => {
    const answer = answered(usual);
    expect(cell(answer, "lines", "300-ohm pair", "lossAtLoad")).toBeGreaterThan(28 * 0.01 + 0.4);
    expect(answer.assumptions.some((a) => a.value.startsWith("two conversions"))).toBe(true);
  });

  it("takes less on receiving than on sending, and never less than nothing", () => {
    const { columns } = table(answered(usual), "lines");
    columns.receivePenalty!.values.forEach((penalty, i) => {
      expect(penalty).toBeGreaterThanOrEqual(0);
      expect(penalty).toBeLessThan(columns.lossAtLoad!.values[i]!);
    });
  });

  it("leaves out a line in which more than one wave travels, and says why", () => {
    const metal = { name: "copper", conductivity: 58e6, permeability: 1 };
    const layers = [{ metal, outerRadius: 5 }];
    const wide: LineEntry = {
      ...entry("a tunnel", 50, 1e-6),
      build: {
        kind: "coaxial",
        inner: { form: "solid", layers, holeRadius: 0, effectiveRadiusRatio: 1, resistanceFactor: 1 },
        outer: { innerRadius: 12, wall: Number.POSITIVE_INFINITY, metal, resistanceFactor: 1 },
        dielectric: { name: "air", permittivity: 1, lossTangent: 0 },
      },
    };
    const answer = answered(plainStation({ lines: [wide] }));
    expect(table(answer, "lines").labels).not.toContain("a tunnel");
    expect(answer.notCovered.join(" ")).toContain("a tunnel: above");
  });

  const twoBands = [7.1e6, 14.2e6].map((f, i) => ({
    name: ["40 m", "20 m"][i]!,
    frequency: exactly(f),
    sweep: { from: f, to: f + 1e5 },
    set: {},
  }));

  it("judges the present line in the band where it brings least, and tells every line in every band", () => {
    const answer = answered(plainStation({ bands: twoBands }));
    const rows = table(answer, "lineBands");
    expect(rows.labels).toHaveLength(2 * table(answer, "lines").labels!.length);
    const own = rows.columns.wattsIntoAntenna!.values.filter((_, i) => rows.labels![i]!.startsWith("a line,"));
    expect(value(answer, "wattsOfPresent")).toBe(Math.min(...own.map(Number)));
  });

  it("holds one line to a switch against a line for each antenna", () => {
    const { path } = plainStation();
    const end = {
      kind: "switch" as const,
      name: "relay",
      positions: { one: pathOf([linePart("tail", 2)]), other: pathOf([linePart("other tail", 5)], "nowhere") },
      idle: "open" as const,
      now: "one",
      loss: exactly(0.3),
      isolation: null,
    };
    const answer = answered(plainStation({ path: { ...path, end } }));
    const { labels, columns } = table(answer, "oneOrSeveral");
    const [asItIs] = columns.wattsIntoAntenna!.values;
    expect(asItIs).toBeCloseTo(value(answer, "powerIntoAntenna"), 9);
    const each = labels!.findIndex((l) => l.startsWith("2 lines of"));
    expect(columns.metresOfLine!.values[0]).toBeCloseTo(28 + 2 + 5, 9);
    expect(columns.metresOfLine!.values[each]).toBeCloseTo(2 * 28 + 2 + 5, 9);
    // Into a load near the rated one the switch's 0.3 dB is what a line each saves.
    expect(10 * Math.log10(columns.wattsIntoAntenna!.values[each]! / asItIs!)).toBeCloseTo(0.3, 1);
  });

  it("answers without any other line", () => {
    const alone = line.run(usual, {}, { program: "", catalogue: "", fileHash: "", kept });
    let step = alone.next();
    while (!step.done) step = alone.next();
    if ("refused" in step.value) throw new Error(step.value.refused.why);
    expect(step.value.next).toContain("Keep it");
    expect(table(step.value, "lineLength").columns.length!.values.length).toBeGreaterThan(40);
  });

  it("refuses names that are not there, and a path without a line, with what would do", () => {
    const refused = (station: Station, parameters: Parameters<Run>[1]) => {
      const answer = run(line, station, parameters);
      if (!("refused" in answer)) throw new Error("answered");
      return answer.refused;
    };
    expect(refused(usual, { line: "line 9" }).wouldMakeItAnswerable).toContain("line 1");
    expect(refused(usual, { candidates: "thick lien" }).wouldMakeItAnswerable).toContain("thick line");
    expect(refused(plainStation({ path: pathOf([]) }), {}).why).toContain("no line");
  });

  it("gives the same bytes twice, and nothing that JSON cannot hold", () => {
    const [once, again] = [answered(usual), answered(usual)].map((a) => JSON.stringify(a));
    expect(once).toBe(again);
    const walk = (thing: unknown): void => {
      if (typeof thing === "number") expect(Number.isFinite(thing)).toBe(true);
      else if (typeof thing === "object" && thing !== null) Object.values(thing).forEach(walk);
    };
    walk(answered(usual));
  });
});
