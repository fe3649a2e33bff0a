import { describe, expect, it } from "vitest";
import { filmOf } from "../filmOf";
import { exampleAnswer } from "../testing/exampleAnswer";
import { exampleBounce } from "../testing/exampleBounce";
import { animatedBounce } from "./bounceAnimated";

const svg = (cut: number | null): string => {
  const answer = exampleBounce();
  return animatedBounce({ ...answer, parameters: { ...answer.parameters, cut } }, { width: 640 });
};
const animations = (text: string): RegExpMatchArray[] => [...text.matchAll(/<animate [^>]*>/g)];
const attribute = (tag: string, name: string): string[] => tag.match(new RegExp(`${name}="([^"]*)"`))![1]!.split(";");

describe("the film as one picture", () => {
  it("moves four curves and a dot, each with a value for every beat, on one clock from 0 to 1", () => {
    for (const cut of [null, 60]) {
      const found = animations(svg(cut));
      expect(found).toHaveLength(5);
      for (const [tag] of found) {
        const keys = attribute(tag, "keyTimes").map(Number);
        expect(attribute(tag, "values")).toHaveLength(keys.length);
        expect(keys[0]).toBe(0);
        expect(keys[keys.length - 1]).toBe(1);
        expect(keys.every((key, i) => i === 0 || key >= keys[i - 1]!)).toBe(true);
      }
    }
  });

  it("holds the last moment before time is left out, and says so", () => {
    expect(svg(60)).toContain("as it stays");
    expect(svg(null)).not.toContain("as it stays");
  });

  it("stands still where motion is not wanted, has no script and fetches nothing", () => {
    const text = svg(60);
    expect(text).toMatch(/prefers-reduced-motion:reduce\)\{\.moves\{display:none\}\.stands\{display:inline\}\}/);
    expect(text).not.toMatch(/<script|href=|url\(http/);
  });

  it("is told with its message", () => {
    expect(svg(null)).toContain(">Settled after 7 echoes: 94 of 100 W reach the antenna.</text>");
  });
});

describe("films by question", () => {
  it("are there for an answer that has moments, and for no other", () => {
    expect(filmOf(exampleAnswer())).toBeNull();
    const film = filmOf(exampleBounce())!;
    expect(film.moments).toBe(81);
    expect(film.frame(80, { width: 320 }).title).toContain(film.says(80));
    expect(() => film.frame(81, { width: 320 })).toThrow(/no moment 81/);
  });
});
