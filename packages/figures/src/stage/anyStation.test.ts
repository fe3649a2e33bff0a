import type { Answer } from "@feedpath/engine";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inside, overlap } from "../kit/box";
import type { Mark } from "../kit/figure";
import { textBox } from "../kit/labelBoard";
import { toSvg } from "../kit/toSvg";
import { exampleAnswer, exampleDrawing, exampleJoint, examplePart } from "../testing/exampleAnswer";
import { ribbonPlan } from "./ribbonPlan";
import { stage } from "./stage";
import { stageStyle } from "./stageOptions";
import { stagePlan } from "./stagePlan";

const kinds = ["line", "choke", "tuner", "meter", "transformer", "connector"] as const;
const weight = fc.double({ min: 1e-4, max: 1, noNaN: true });

interface Drawn {
  readonly kind: (typeof kinds)[number];
  readonly heat: number;
  readonly swr: number;
}

const drawnPart = fc.record({
  kind: fc.constantFrom(...kinds),
  heat: weight,
  swr: fc.double({ min: 1, max: 40, noNaN: true }),
});

/** A path of any parts, at any power, with any mix of where it goes. */
const anyAnswer = fc
  .record({
    parts: fc.array(drawnPart, { maxLength: 12 }),
    rest: fc.tuple(weight, weight, weight),
    whole: fc.constantFrom(0.5, 5, 100, 1500),
    height: fc.double({ min: 0.2, max: 40, noNaN: true }),
    run: fc.double({ min: 0, max: 60, noNaN: true }),
    azimuth: fc.integer({ min: 0, max: 359 }),
  })
  .map(({ parts, rest, whole, height, run, azimuth }) => {
    const sum = [...parts.map((part) => part.heat), ...rest].reduce((a, b) => a + b, 0);
    return assembled(
      parts,
      rest.map((one) => (one / sum) * whole),
      whole,
      whole / sum,
      { height, run, azimuth },
    );
  });

function assembled(
  parts: readonly Drawn[],
  [sky = 0, soil = 0, wires = 0]: readonly number[],
  whole: number,
  scale: number,
  place: { readonly height: number; readonly run: number; readonly azimuth: number },
): Answer {
  const base = exampleAnswer();
  const joints = [exampleJoint("transmitter", whole, 1.4, 60, 10)];
  const results = parts.map(({ kind, heat, swr }, i) => {
    const before = joints.at(-1)!;
    const to = i === parts.length - 1 ? "feed point" : `after ${kind} ${i}`;
    joints.push(exampleJoint(to, before.power - heat * scale, swr, 40, -20));
    const numbers = { power: before.power, heat: heat * scale, length: kind === "line" ? 3 + 20 * heat : 0 };
    return examplePart(`${kind} ${i}`, kind, `${kind} of any make`, { from: before.name, to }, numbers);
  });
  const { height, run, azimuth } = place;
  return {
    ...base,
    joints: parts.length > 0 ? joints : [...joints, exampleJoint("feed point", whole, 1.4, 60, 10)],
    parts: results,
    values: {
      ...base.values,
      powerFromTransmitter: { value: whole, unit: "W" },
      powerIntoAntenna: { value: sky + soil + wires, unit: "W" },
      heatInWires: { value: wires, unit: "W" },
      heatInSoil: { value: soil, unit: "W" },
      radiatedPower: { value: sky, unit: "W", low: 0.8 * sky, high: 1.1 * sky },
    },
    drawing: {
      ...exampleDrawing,
      feedPoint: [0, 0, height],
      wires: [{ name: "wire", from: [-10, 0, height], to: [10, 0, height] }],
      lineRoute: [
        [0, -run, 0],
        [0, 0, 0],
        [0, 0, height],
      ],
      cutAzimuth: azimuth,
    },
  };
}

const flat = (marks: readonly Mark[]): Mark[] =>
  marks.flatMap((one) => (one.kind === "group" ? flat(one.marks) : [one]));
const widths = fc.constantFrom(280, 320, 390, 600, 682, 960, 1112, 1240, 1800);

describe("the stage of any station", () => {
  it("keeps labels inside and apart and writes only numbers", () => {
    fc.assert(
      fc.property(anyAnswer, widths, (answer, width) => {
        const figure = stage(answer, { width });
        const frame = { left: 0, top: 0, right: figure.width, bottom: figure.height };
        const boxes = flat(figure.marks).flatMap((one) => (one.kind === "text" ? [textBox(one)] : []));
        expect(boxes.every((box) => inside(box, frame))).toBe(true);
        expect(boxes.some((a, i) => boxes.slice(i + 1).some((b) => overlap(a, b)))).toBe(false);
        expect(toSvg(figure, { theme: "light", idPrefix: "a" })).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { seed: 1, numRuns: 60 },
    );
  });

  it("always tells the watts to the sky, and both ends of the path above 600 px", () => {
    fc.assert(
      fc.property(anyAnswer, widths, (answer, width) => {
        const marks = flat(stage(answer, { width }).marks);
        const named = (id: string) => marks.some((one) => one.kind === "text" && one.id === id);
        expect(named("sky")).toBe(true);
        if (width >= 600) expect(named("transmitter") && named("feed point")).toBe(true);
      }),
      { seed: 2, numRuns: 60 },
    );
  });

  it("keeps every strip in the picture and tells its watts, from 390 px up", () => {
    fc.assert(
      fc.property(anyAnswer, fc.constantFrom(390, 682, 1112, 1800), (answer, width) => {
        const { strips } = ribbonPlan(answer, stagePlan(answer, stageStyle({ width })), 0);
        const marks = flat(stage(answer, { width }).marks);
        for (const strip of strips) {
          expect(strip.turn + 9 + strip.thickness).toBeLessThanOrEqual(width);
          expect(marks.some((one) => one.kind === "text" && one.role === "heatInk" && one.id === strip.id)).toBe(true);
        }
      }),
      { seed: 4, numRuns: 60 },
    );
  });

  it("draws strips and sky that add up to the power within half a px", () => {
    fc.assert(
      fc.property(anyAnswer, widths, (answer, width) => {
        const { k, strips, radiated, whole } = ribbonPlan(answer, stagePlan(answer, stageStyle({ width })), 0);
        const drawn = strips.reduce((sum, strip) => sum + k * strip.watts, k * radiated);
        const leftOut = answer.parts.length * k * whole * 0.0005;
        expect(Math.abs(drawn - k * whole)).toBeLessThan(0.5 + leftOut);
      }),
      { seed: 3, numRuns: 60 },
    );
  });
});
