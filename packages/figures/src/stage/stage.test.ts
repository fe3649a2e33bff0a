import { describe, expect, it } from "vitest";
import { inside, overlap } from "../kit/box";
import type { Figure, Mark } from "../kit/figure";
import { type TextMark, textBox } from "../kit/labelBoard";
import { exampleAnswer, exampleDrawing, exampleLongPath, exampleTee, mixes } from "../testing/exampleAnswer";
import { ribbonPlan } from "./ribbonPlan";
import { ribbon, section, stage } from "./stage";
import { type StageOptions, stageStyle } from "./stageOptions";
import { stagePlan } from "./stagePlan";

const sizes: readonly StageOptions[] = [
  { width: 320 },
  { width: 390 },
  { width: 682, scale: 0.8 },
  { width: 1112 },
  { width: 1800, scale: 1.85, maximumHeight: 850 },
];
const usual = (name: string) => mixes[name]!;

const flat = (marks: readonly Mark[]): Mark[] =>
  marks.flatMap((one) => (one.kind === "group" ? [one, ...flat(one.marks)] : [one]));
const texts = (figure: Figure): TextMark[] => flat(figure.marks).filter((one) => one.kind === "text");
const words = (figure: Figure): string[] => texts(figure).map((one) => one.text.replaceAll("\u00a0", " "));

const cases = Object.keys(mixes).flatMap((mix) => sizes.map((options) => ({ mix, options, width: options.width })));

describe("a stage", () => {
  it.each(cases)("keeps labels inside and apart: $mix at $width px", ({ mix, options }) => {
    const figure = stage(exampleAnswer(usual(mix)), options);
    const boxes = texts(figure).map((one) => ({ text: one.text, box: textBox(one) }));
    const frame = { left: 0, top: 0, right: figure.width, bottom: figure.height };
    expect(boxes.filter(({ box }) => !inside(box, frame)).map(({ text }) => text)).toEqual([]);
    const over = boxes.flatMap((a, i) =>
      boxes
        .slice(i + 1)
        .filter((b) => overlap(a.box, b.box))
        .map((b) => [a.text, b.text]),
    );
    expect(over).toEqual([]);
  });

  it.each(cases)("never drops the watts: $mix at $width px", ({ mix, options }) => {
    const shares = usual(mix);
    const shown = words(stage(exampleAnswer(shares), options)).join("|");
    for (const watts of [shares.sky, shares.soil, shares.line, shares.wires])
      expect(shown).toContain(`${watts.toFixed(1)} W`);
    expect(shown).toContain("SWR 1.9");
    expect(shown).toContain("shape: field");
  });

  it.each(cases)("strips and sky add up to the power within half a px: $mix at $width px", ({ mix, options }) => {
    const answer = exampleAnswer(usual(mix));
    const plan = stagePlan(answer, stageStyle(options));
    const { k, strips, radiated, whole } = ribbonPlan(answer, plan, 0);
    const drawn = strips.reduce((sum, strip) => sum + k * (strip.before - strip.after), k * radiated);
    expect(Math.abs(drawn - k * whole)).toBeLessThan(0.5);
    const thickest = strips.filter((strip) => k * strip.watts >= 1.5);
    for (const strip of thickest) expect(strip.thickness).toBeCloseTo(k * strip.watts, 6);
  });

  it("stacks the strips without a gap: each begins where the one before ended", () => {
    const answer = exampleLongPath();
    const { strips, radiated } = ribbonPlan(answer, stagePlan(answer, stageStyle({ width: 1112 })), 0);
    expect(strips.length).toBe(6);
    for (const [i, strip] of strips.slice(1).entries()) expect(strip.before).toBeCloseTo(strips[i]!.after, 6);
    expect(strips.at(-1)!.after).toBeCloseTo(radiated, 6);
  });

  it("turns strips down in their order, 12 px clear of each other", () => {
    for (const options of sizes) {
      const answer = exampleLongPath();
      const { strips, stage: plan } = ribbonPlan(answer, stagePlan(answer, stageStyle(options)), 0);
      for (const [i, strip] of strips.slice(1).entries()) {
        const before = strips[i]!;
        const clear = plan.compact ? 0 : 12;
        expect(strip.turn + 9 * plan.s).toBeGreaterThanOrEqual(
          before.turn + 9 * plan.s + before.thickness + clear - 1e-9,
        );
      }
    }
  });

  it("shares one horizontal order with the section: joints stand under transmitter and feed point", () => {
    const answer = exampleAnswer();
    const plan = stagePlan(answer, stageStyle({ width: 1112 }));
    const below = ribbonPlan(answer, plan, 0);
    expect(below.left).toBeCloseTo(plan.xTransmitter, 6);
    expect(below.xFeed).toBe(plan.xFeed);
    expect(plan.xFeed).toBeCloseTo(0.388 * 1112, 6);
  });

  it("keeps 96 px of ribbon where the run is short", () => {
    const base = exampleAnswer();
    const lineRoute = [
      [0, -1, 0],
      [0, 0, 0],
      [0, 0, 12],
    ];
    const answer = { ...base, drawing: { ...exampleDrawing, lineRoute } };
    const plan = stagePlan(answer, stageStyle({ width: 1112 }));
    const below = ribbonPlan(answer, plan, 0);
    expect(plan.xFeed - plan.xTransmitter).toBeLessThan(96);
    expect(below.xFeed - below.left).toBeCloseTo(96, 6);
  });

  it("says that wires are seen from their end only where they are", () => {
    const along = { ...exampleAnswer(), drawing: { ...exampleDrawing, cutAzimuth: 90 } };
    expect(words(stage(exampleAnswer(), { width: 1112 }))).toContain("dipole, 20.1 m, seen from its end");
    expect(words(stage(along, { width: 1112 }))).toContain("dipole, 20.1 m");
  });

  it("draws a lobe whose radius is field strength: half the reference power, 0.707 of the radius", () => {
    const answer = exampleAnswer();
    const own = stagePlan(answer, stageStyle({ width: 1112 })).lobeRadius;
    expect(own).toBeCloseTo(0.2 * 1112, 6);
    const reach = (figure: Figure) => {
      const lobe = figure.marks.find((one) => one.kind === "path" && one.fill?.radial);
      return lobe?.kind === "path" ? lobe.fill!.radial!.r : Number.NaN;
    };
    const alone = reach(stage(answer, { width: 1112 }));
    expect(alone).toBeCloseTo(own, 6);
    const gain = Math.max(...(answer.tables[0]!.columns.gain!.values as number[]));
    const strength = 10 ** (gain / 10) * 87.8;
    const beside = reach(stage(answer, { width: 1112, referenceStrength: 2 * strength }));
    expect(beside).toBeCloseTo(own / Math.sqrt(2), 6);
  });

  it("leaves out what is under 0.05 % of the power, but lists it", () => {
    const figure = stage(exampleAnswer({ sky: 80, soil: 19.96, line: 0.02, wires: 0.02 }), { width: 1112 });
    expect(words(figure).some((text) => text.includes("warms the line"))).toBe(false);
    expect(figure.table.rows.map((row) => row[1])).toEqual([100, 0.02, 0, 0.02, 19.96, 80]);
  });

  it("joins parts under 1 % where there are more than five strips", () => {
    const base = exampleLongPath();
    const parts = base.parts.map((part) => (part.name === "balun 1" ? { ...part, heat: 0.9 } : part));
    const shown = words(stage({ ...base, parts }, { width: 1112 }));
    expect(shown).toContain("warms small parts together");
  });

  it("shows the doubt with its cause, and no bracket where there is none", () => {
    const shown = words(stage(exampleAnswer(), { width: 1112 }));
    expect(shown).toContain("58 to 78 W");
    expect(shown.join(" ")).toContain("dry to wet soil");
    expect(words(stage(exampleLongPath(), { width: 1112 })).join(" ")).not.toContain(" to 78 W");
  });

  it("tells a split path as one column with the watts of each feed, and says when power comes back", () => {
    const tee = exampleTee();
    expect(words(stage(tee, { width: 1112 }))).toContain("left 55.0 W, right 32.8 W");
    const joints = tee.joints.map((joint) => (joint.name === "feed point right" ? { ...joint, power: -3 } : joint));
    const back = stage({ ...tee, joints }, { width: 1112 });
    expect(words(back)).toContain("left 55.0 W, right 3.0 W back");
    expect(back.description).toContain("3.0\u00a0W come back");
  });

  it("describes every joint in path order", () => {
    const { description } = stage(exampleLongPath(), { width: 390 });
    const names = exampleLongPath().joints.map((joint) => description.indexOf(`joint "${joint.name}"`));
    expect(names.every((at) => at >= 0)).toBe(true);
    expect(names).toEqual(names.toSorted((a, b) => a - b));
  });

  it("is a ribbon alone without a drawing; a section alone then says what is missing", () => {
    const answer = { ...exampleAnswer(), drawing: null };
    expect(stage(answer, { width: 1112 }).height).toBe(ribbon(answer, { width: 1112 }).height);
    expect(() => section(answer, { width: 1112 })).toThrow("has no drawing");
  });

  it("names the number that is missing", () => {
    const answer = exampleAnswer();
    const { radiatedPower: _, ...values } = answer.values;
    expect(() => stage({ ...answer, values }, { width: 1112 })).toThrow('has no number "radiatedPower"');
    expect(() => stage(answer, { width: 100 })).toThrow("280 px or more");
  });
});
