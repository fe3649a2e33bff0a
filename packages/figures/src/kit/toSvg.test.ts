import { describe, expect, it } from "vitest";
import { stage } from "../stage/stage";
import { exampleAnswer } from "../testing/exampleAnswer";
import type { Figure } from "./figure";
import { toSvg } from "./toSvg";

const nasty = `"><script>alert('x')</script>&\u0007`;
const plain: Figure = {
  name: "plain",
  title: nasty,
  width: 100,
  height: 50,
  marks: [{ kind: "text", id: nasty, x: 1, y: 2, text: nasty, role: "ink", size: 13, face: "numbers" }],
  description: nasty,
  table: { caption: "", columns: [], rows: [] },
};

describe("toSvg", () => {
  it("escapes every text, in content and in attributes", () => {
    const svg = toSvg(plain, { theme: "light", idPrefix: "a", standalone: true });
    expect(svg).not.toContain("<script");
    expect(svg).not.toContain("\u0007");
    expect(svg.match(/&lt;script&gt;/g)?.length).toBe(6);
  });

  it("gives ids that begin with the prefix and refers only to ids it defines", () => {
    const svg = toSvg(stage(exampleAnswer(), { width: 1112 }), { theme: "dark", idPrefix: "one" });
    const ids = [...svg.matchAll(/ id="([^"]+)"/g)].map((match) => match[1]!);
    const used = [...svg.matchAll(/url\(#([^)]+)\)/g)].map((match) => match[1]!);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.every((id) => id.startsWith("one-"))).toBe(true);
    expect(used.length).toBeGreaterThan(5);
    expect(used.filter((id) => !ids.includes(id))).toEqual([]);
  });

  it("writes properties for theme css and colours otherwise", () => {
    const figure = stage(exampleAnswer(), { width: 390 });
    const css = toSvg(figure, { theme: "css", idPrefix: "a" });
    expect(css).toContain("var(--fp-power)");
    expect(css).toContain("var(--fp-heat-ink)");
    expect(css).not.toMatch(/#[0-9A-F]{6}/);
    const light = toSvg(figure, { theme: "light", idPrefix: "a" });
    expect(light).toContain("#0072B2");
    expect(light).not.toContain("var(");
  });

  it("keeps the second code of every hue: heat hatched, field dotted", () => {
    const svg = toSvg(stage(exampleAnswer(), { width: 1112 }), { theme: "light", idPrefix: "a" });
    expect(svg).toContain('patternTransform="rotate(45)"');
    expect(svg.match(/<pattern /g)?.length).toBe(2);
  });

  it("refuses a prefix that is no id", () => {
    expect(() => toSvg(plain, { theme: "light", idPrefix: 'a"b' })).toThrow("not usable");
  });

  it("writes no number that is none", () => {
    const svg = toSvg(stage(exampleAnswer(), { width: 682, scale: 0.8 }), { theme: "light", idPrefix: "a" });
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
  });
});
