import { describe, expect, it } from "vitest";
import { inside, overlap } from "../../kit/box";
import type { Figure, Mark } from "../../kit/figure";
import { textBox } from "../../kit/labelBoard";
import { toCsv, toTable } from "../../kit/table";
import { toSvg } from "../../kit/toSvg";
import type { FigureExample } from "./example";

const modules = import.meta.glob<{ examples: readonly FigureExample[] }>("./*.example.ts", { eager: true });
const examples = Object.values(modules).flatMap((module) => module.examples);
const sources = import.meta.glob<string>(
  ["../../*.ts", "../../{kit,stage,curves,patterns}/*.ts", "!../../**/*.test.ts"],
  {
    eager: true,
    query: "?raw",
    import: "default",
  },
);

const builders = Object.values(sources).flatMap((source) =>
  [...source.matchAll(/export function (\w+)\([^)]*\): Figure \{/g)].map((match) => match[1]!),
);

/** One decimal is enough to see a change and hides the last bits of a sine. */
const coarse = (svg: string): string =>
  svg.replace(/\d+\.\d{2,}/g, (number) => String(Number(Number(number).toFixed(1))));

const flat = (marks: readonly Mark[]): Mark[] =>
  marks.flatMap((one) => (one.kind === "group" ? [one, ...flat(one.marks)] : [one]));

function faults(figure: Figure): string[] {
  const texts = flat(figure.marks).filter((one) => one.kind === "text");
  const frame = { left: 0, top: 0, right: figure.width, bottom: figure.height };
  const boxes = texts.map((one) => ({ text: one.text, box: textBox(one) }));
  const outside = boxes.filter(({ box }) => !inside(box, frame)).map(({ text }) => `outside: ${text}`);
  const over = boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter((b) => overlap(a.box, b.box))
      .map((b) => `${a.text} over ${b.text}`),
  );
  return [...outside, ...over];
}

describe("the gallery", () => {
  it("finds the builders in the sources, and shows each of them", () => {
    expect(builders).toContain("stage");
    expect(builders).toContain("heightPanels");
    const shown = new Set(examples.map((example) => example.builder));
    expect(builders.filter((builder) => !shown.has(builder))).toEqual([]);
  });

  it("has no production code that imports examples or invented answers", () => {
    const guilty = Object.entries(sources).filter(([, source]) => /from "[^"]*testing\//.test(source));
    expect(Object.keys(sources).length).toBeGreaterThan(30);
    expect(guilty.map(([path]) => path)).toEqual([]);
  });

  for (const { name, draw } of examples) {
    it(`${name}: looks as it did`, async () => {
      const svg = toSvg(draw(), { theme: "light", idPrefix: name, standalone: true });
      await expect(coarse(svg).replaceAll("><", ">\n<")).toMatchFileSnapshot(`pictures/${name}.svg`);
    });

    it(`${name}: no label outside or over another, a description, a table`, () => {
      const figure = draw();
      expect(faults(figure)).toEqual([]);
      expect(figure.title.length).toBeGreaterThan(0);
      expect(figure.description.length).toBeGreaterThan(10);
      expect(toTable(figure).rows.length).toBe(figure.table.rows.length);
      expect(toCsv(figure).split("\r\n").length).toBe(figure.table.rows.length + 2);
    });
  }
});
