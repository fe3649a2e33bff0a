import { describe, expect, it } from "vitest";
import type { Answer, Refusal } from "../../answer/answer";
import { exactly } from "../../quantity/quantity";
import type { LinePart, Path } from "../../station/path";
import type { Station } from "../../station/station";
import { coaxialBuild } from "../../testing/coaxialBuild";
import type { Parameters } from "../common/question";
import { why } from "./run";

const build = coaxialBuild({ inner: 0.45e-3, outer: 1.475e-3, strands: 0.97, innerFactor: 1.25, outerFactor: 2 });
const linePart: LinePart = {
  kind: "line",
  name: "line 1",
  note: "",
  state: "in line",
  line: { designation: "thin line", model: build, build: null, sources: [] },
  length: exactly(20),
  route: [],
  condition: "dry",
  excessLoss: exactly(0),
  temperature: null,
};

const station = (path: Path): Station => ({
  title: "Harbour school club",
  note: "",
  bands: [{ name: "", frequency: exactly(145e6), sweep: { from: 144e6, to: 146e6 }, set: {} }],
  transmitter: {
    power: exactly(100),
    duty: exactly(0.4),
    onAir: null,
    designedFor: exactly(50),
    powerAtSwr: [],
    earthed: "floating",
    noiseFigure: null,
  },
  path,
  antennas: [],
  ground: { kind: "free space" },
  earths: [],
  surroundings: [],
  people: [],
  wanted: { elevation: null, direction: null, swrBelow: null, mayChange: [] },
  readings: [],
  assumptions: [],
  measured: {},
});

const end = { kind: "feed", feed: "antenna" } as const;
const context = { program: "test", catalogue: "test", fileHash: "0" };

function asked(path: Path, parameters: Parameters = {}): Answer | Refusal {
  const run = why.run(station(path), parameters, context);
  for (;;) {
    const step = run.next();
    if (step.done) return step.value;
  }
}
function answered(path: Path, parameters: Parameters = {}): Answer {
  const answer = asked(path, parameters);
  if ("refused" in answer) throw new Error(answer.refused.why);
  return answer;
}
const value = (answer: Answer, name: string): number => {
  const found = answer.values[name];
  if (!found || !("value" in found) || found.value === null) throw new Error(`no value "${name}"`);
  return found.value;
};

describe("why", () => {
  it("finds 77 ohm for loss, 60 for voltage and 30 for power with air", () => {
    // Source: 76.65, 59.96 and 29.98 ohm for vacuum between like conductors (Chipman 1968 for the first); divided by sqrt(1.00059).
    const answer = answered({ parts: [], end }, { dielectric: "air", outerSize: 7.24e-3 });
    const air = Math.sqrt(1.00059);
    expect(value(answer, "attenuationOptimum") * air).toBeCloseTo(76.6548055480377, 7);
    expect(value(answer, "voltageOptimum") * air).toBeCloseTo(59.9584916, 7);
    expect(value(answer, "powerOptimum") * air).toBeCloseTo(29.9792458, 7);
    // 1.1027259924129 at 50 ohm in vacuum: (x + 1)/ln x over its least; "10 % higher" in Chipman 1968.
    const told = /would add ([\d.]+) %/.exec(answer.working.map((step) => step.text).join(" "));
    expect(Math.abs(Number(told?.[1]) - 10.27)).toBeLessThan(0.03);
    expect(Math.abs(value(answer, "extraAttenuationAt50") - 10)).toBeLessThan(0.5);
  });

  it("takes the first coaxial line's build, and says what its braid does", () => {
    const answer = answered({ parts: [linePart], end });
    expect(answer.parameters.outerSize).toBeCloseTo(2.95e-3, 12);
    expect(answer.headline).toMatch(/^Polyethylene cable warms least at 5[01](\.\d)? Ω; 50 Ω adds/);
    expect(value(answer, "attenuationOptimumAsBuilt")).toBeGreaterThan(value(answer, "attenuationOptimum"));
    expect(answer.assumptions.map((a) => a.value)).not.toContain("7.24 mm");
  });

  it("finds a line behind a switch, and assumes one where there is none", () => {
    const behind: Path = {
      parts: [],
      end: {
        kind: "switch",
        name: "relay",
        positions: { up: { parts: [linePart], end } },
        idle: "open",
        now: "up",
        loss: exactly(0),
        isolation: null,
      },
    };
    expect(answered(behind).parameters.outerSize).toBeCloseTo(2.95e-3, 12);
    const none = answered({ parts: [], end });
    expect(none.parameters).toMatchObject({ dielectric: "polyethylene", outerSize: 7.24e-3 });
    expect(none.assumptions.map((a) => a.value)).toEqual(expect.arrayContaining(["7.24 mm", "polyethylene", "copper"]));
  });

  it("keeps to the form of an answer: short headline, linked numbers, columns of one length, working for every value", () => {
    const answer = answered({ parts: [linePart], end }, { dielectric: "foam polyethylene" });
    expect(answer.headline.split(" ").length).toBeLessThanOrEqual(12);
    expect(answer.headlinePhrases.map((p) => p.text).join("")).toBe(answer.headline);
    for (const { value: name } of [...answer.headlinePhrases, ...answer.verdictPhrases]) {
      if (name !== undefined) expect(answer.values).toHaveProperty(name);
    }
    const table = answer.tables[0]!;
    const lengths = Object.values(table.columns).map((c) => c.values.length);
    expect(new Set(lengths).size).toBe(1);
    expect(table.columns).toHaveProperty(table.axis);
    const explained = new Set(answer.working.flatMap((step) => step.explains));
    expect(Object.keys(answer.values).filter((name) => !explained.has(name))).toEqual([]);
    expect(JSON.stringify(answer)).not.toMatch(/null,null|NaN|Infinity/);
  });

  it("has curves whose best values are one and nowhere passed", () => {
    const { columns } = answered({ parts: [linePart], end }).tables[0]!;
    const numbers = (name: string) => (columns[name]?.values ?? []).map(Number);
    expect(Math.min(...numbers("relativeAttenuation"))).toBeCloseTo(1, 9);
    expect(Math.max(...numbers("relativePeakVoltage"))).toBeCloseTo(1, 12);
    expect(Math.max(...numbers("relativePeakPower"))).toBeCloseTo(1, 12);
  });

  it("refuses what it cannot study, and says what would do", () => {
    const refused = asked({ parts: [], end }, { dielectric: "cheese" });
    expect("refused" in refused ? refused.refused.wouldMakeItAnswerable : "").toMatch(/air, polyethylene/);
    expect("refused" in asked({ parts: [], end }, { outerSize: 2 })).toBe(true);
    expect("refused" in asked({ parts: [], end }, { band: "12 m" })).toBe(true);
  });

  it("studies a pair of one spacing with the impedances pairs have", () => {
    const answer = answered({ parts: [], end }, { shape: "pair" });
    expect(answer.headline).toMatch(/^An open pair warms least at 17\d(\.\d)? Ω; 300 Ω adds/);
    expect(value(answer, "extraAttenuationAt600")).toBeGreaterThan(value(answer, "extraAttenuationAt300"));
    expect(answer.assumptions.map((a) => a.value)).toEqual(expect.arrayContaining(["150 mm", "air"]));
    expect(answer.mistakenIdea?.refutation).toMatch(/thinner wires/);
    expect(JSON.stringify(answer)).not.toMatch(/NaN|undefined/);
  });

  it("holds weight or cost, and says what it took for them", () => {
    const [size, weight] = ["size", "weight"].map((held) =>
      value(answered({ parts: [], end }, { held }), "attenuationOptimumAtFrequency"),
    );
    expect(weight).toBeGreaterThan(size!);
    const cost = answered({ parts: [], end }, { held: "cost" });
    expect(cost.assumptions.map((a) => a.name)).toContain("price of a kilogram of metal over one of insulation");
    expect(cost.values.attenuationOptimum).toMatchObject({ value: null });
    expect("refused" in asked({ parts: [], end }, { shape: "pair", held: "weight" })).toBe(true);
  });

  it("follows the two sliders: permittivity and size", () => {
    const at = (permittivity: number) =>
      value(answered({ parts: [], end }, { dielectric: "PTFE", permittivity }), "attenuationOptimum");
    expect(at(1) / at(4)).toBeCloseTo(2, 9);
    const power = (outerSize: number) => value(answered({ parts: [], end }, { outerSize }), "greatestPeakPower");
    expect(power(0.02) / power(0.01)).toBeCloseTo(4, 6);
    const mean = (outerSize: number) => value(answered({ parts: [], end }, { outerSize }), "greatestMeanPower");
    expect(mean(0.02)).toBeGreaterThan(2 * mean(0.01));
  });

  it("warns where a second mode may live", () => {
    const thick = answered({ parts: [], end }, { outerSize: 0.3, dielectric: "air" });
    expect(thick.cautions.join(" ")).not.toMatch(/second mode/);
    const run = why.run(
      {
        ...station({ parts: [], end }),
        bands: [{ name: "", frequency: exactly(1.3e9), sweep: { from: 1e9, to: 2e9 }, set: {} }],
      },
      { outerSize: 0.3 },
      context,
    );
    run.next();
    const answer = run.next().value as Answer;
    expect(answer.cautions.join(" ")).toMatch(/second mode/);
  });
});
