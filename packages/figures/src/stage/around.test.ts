import type { Drawing } from "@feedpath/engine";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inside, overlap } from "../kit/box";
import type { Figure, Mark } from "../kit/figure";
import { type TextMark, textBox } from "../kit/labelBoard";
import { exampleAnswer, exampleAround, exampleDrawing } from "../testing/exampleAnswer";
import { aroundOf, personBox } from "./around";
import { distanceFromCut } from "./cut";
import { insetBox } from "./insetPlan";
import { stage } from "./stage";
import { stageStyle } from "./stageOptions";
import { stagePlan } from "./stagePlan";

const flat = (marks: readonly Mark[]): Mark[] =>
  marks.flatMap((one) => (one.kind === "group" ? flat(one.marks) : [one]));
const texts = (figure: Figure): TextMark[] => flat(figure.marks).filter((one) => one.kind === "text");
const words = (figure: Figure): string[] => texts(figure).map((one) => one.text.replaceAll("\u00a0", " "));

const sizes = [
  { width: 320 },
  { width: 390 },
  { width: 682, scale: 0.8 },
  { width: 1112 },
  { width: 1800, scale: 1.85, maximumHeight: 850 },
];

const withDrawing = (more: Partial<Drawing>) => ({ ...exampleAnswer(), drawing: { ...exampleDrawing, ...more } });
const place = fc.tuple(
  fc.double({ min: -40, max: 40, noNaN: true }),
  fc.double({ min: -40, max: 40, noNaN: true }),
  fc.double({ min: 0, max: 20, noNaN: true }),
);
const named = fc.constantFrom(
  "shed",
  "roof terrace next door",
  "the playground behind the old town hall of the village",
);
const anyAround = fc.record({
  people: fc.array(fc.record({ name: named, at: place }), { maxLength: 6 }),
  surroundings: fc.array(fc.record({ name: named, points: fc.array(place, { minLength: 2, maxLength: 4 }) }), {
    maxLength: 4,
  }),
  cutAzimuth: fc.integer({ min: 0, max: 359 }),
});

describe("what stands around the station", () => {
  it("keeps every label inside, apart, and off the figures of people, at every width", () => {
    fc.assert(
      fc.property(anyAround, fc.constantFrom(...sizes), (around, options) => {
        const answer = withDrawing(around);
        const figure = stage(answer, options);
        const plan = stagePlan(answer, stageStyle(options));
        const frame = { left: 0, top: 0, right: figure.width, bottom: figure.height };
        const boxes = texts(figure).map(textBox);
        expect(boxes.every((box) => inside(box, frame))).toBe(true);
        expect(boxes.some((a, i) => boxes.slice(i + 1).some((b) => overlap(a, b)))).toBe(false);
        const { people, conductors } = aroundOf(answer.drawing, plan);
        for (const person of people) {
          const body = personBox(person, plan);
          expect(inside(body, frame)).toBe(true);
          expect(boxes.some((box) => overlap(box, body))).toBe(false);
        }
        const ends = conductors.flatMap(({ pieces }) => pieces.flat());
        for (const [x, y] of ends)
          expect(x >= 0 && x <= figure.width && y >= 0 && y <= plan.surfaceY + 1e-6).toBe(true);
      }),
      { seed: 6, numRuns: 80 },
    );
  });

  it("never takes the words and watts of the station away", () => {
    const told = (answer: ReturnType<typeof exampleAnswer>, width: number) =>
      words(stage(answer, { width })).filter((text) => / W|SWR|dipole|shape/.test(text));
    for (const { width } of sizes) expect(told(exampleAround(), width)).toEqual(told(exampleAnswer(), width));
  });

  it("names people and conductors, says what is off the cut, and leaves out what is far away", () => {
    const shown = words(stage(exampleAround(), { width: 1112 })).join(" ");
    expect(shown).toContain("bench");
    expect(shown).toContain("kitchen, pantry");
    // The cut runs north through the feed point: the post stands 4 m east of it, the fence crosses it.
    expect(shown).toMatch(/lamp post, 4 m off the cut/);
    expect(shown).toMatch(/garden fence(?!, )/);
    expect(shown).not.toContain("crane");
    expect(shown).not.toContain("office");
  });

  it("describes all of them, with the level distance of people", () => {
    const { description } = stage(exampleAround(), { width: 320 });
    const plain = description.replaceAll("\u00a0", " ");
    expect(plain).toContain("Around it: garden fence, lamp post, crane at the harbour.");
    // √(12² + 3²) = 12.4
    expect(plain).toContain("bench (10 m), kitchen (7.6 m), pantry (7.8 m), roof terrace next door (12.4 m)");
  });

  it("stands people to scale: 10 m north of the feed point, 1.7 m tall", () => {
    const answer = exampleAround();
    const plan = stagePlan(answer, stageStyle({ width: 1112 }));
    const bench = aroundOf(answer.drawing!, plan).people.find(({ names }) => names[0] === "bench")!;
    expect(bench.feet[0]).toBeCloseTo(plan.xFeed + 10 * plan.ppm, 6);
    expect(bench.feet[1]).toBeCloseTo(plan.surfaceY, 6);
    expect(bench.feet[1] - personBox(bench, plan).top).toBeCloseTo(1.7 * plan.ppm, 6);
  });

  it("draws nothing under the view from above", () => {
    const people = [{ name: "crow's nest", at: [0, 0, 0] }];
    const base = stagePlan(exampleAnswer(), stageStyle({ width: 1112 }));
    const inset = insetBox(base)!;
    const y = ((inset.left + inset.right) / 2 - base.xFeed) / base.ppm;
    const z = (base.surfaceY - (inset.top + inset.bottom) / 2) / base.ppm;
    const answer = withDrawing({ people: people.map((one) => ({ ...one, at: [0, y, z] })) });
    expect(aroundOf(answer.drawing, base).people).toEqual([]);
  });

  it("measures from the plane of the cut to the nearest point", () => {
    const east = { ...exampleDrawing, cutAzimuth: 90 };
    expect(distanceFromCut(east, [[5, -3, 0]])).toBeCloseTo(3, 12);
    expect(distanceFromCut(exampleDrawing, [[5, -3, 0]])).toBeCloseTo(5, 12);
    expect(
      distanceFromCut(exampleDrawing, [
        [5, 0, 0],
        [2, 9, 0],
      ]),
    ).toBeCloseTo(2, 12);
    expect(
      distanceFromCut(exampleDrawing, [
        [5, 0, 0],
        [-2, 9, 0],
      ]),
    ).toBe(0);
  });
});
