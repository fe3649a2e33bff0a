/** The frame of a polar picture: gain by radius (dB), rings with their dBi, and where things lie on it. */
import type { Mark } from "../kit/figure";
import type { LabelBoard } from "../kit/labelBoard";
import { fixedText } from "../kit/numberText";
import { type Point, polyline } from "../kit/outline";

export interface PatternOptions {
  /** Of the picture, px. */
  readonly width: number;
  /** Of type and strokes. Left out: 1. */
  readonly scale?: number;
}

export interface PolarFrame {
  readonly cx: number;
  readonly cy: number;
  readonly radius: number;
  readonly s: number;
  /** dBi on the outermost ring. */
  readonly top: number;
  /** px from the centre. */
  readonly radiusOf: (dbi: number) => number;
  /** `angle` in degrees from the right hand, against the clock. */
  readonly at: (angle: number, radius: number) => Point;
}

/** dB from the outermost ring to the centre: weaker directions shrink to it. */
export const span = 30;
const ringStep = 10;

/** The ring at or above a gain, dBi, in steps of 5. */
export const topRing = (most: number): number => Math.max(0, 5 * Math.ceil(most / 5 - 1e-6));

export function polarFrame(place: Pick<PolarFrame, "cx" | "cy" | "radius" | "s">, top: number): PolarFrame {
  const { cx, cy, radius } = place;
  return {
    ...place,
    top,
    radiusOf: (dbi) => radius * Math.max(0, Math.min(1, (dbi - top + span) / span)),
    at: (angle, r) => {
      const a = (angle * Math.PI) / 180;
      return [cx + r * Math.cos(a), cy - r * Math.sin(a)];
    },
  };
}

/** Gains of the rings, dBi, from the outermost inwards. */
export const ringsOf = ({ top }: PolarFrame): number[] =>
  Array.from({ length: span / ringStep }, (_, i) => top - i * ringStep);

/** Rings over the angles from 0 to `to` degrees, and rays every 30. */
export function frameMarks(frame: PolarFrame, to: 180 | 360): Mark[] {
  const { s, radius, at, radiusOf } = frame;
  const stroke = { role: "hair", width: 1 * s } as const;
  const rings = ringsOf(frame).map((gain): Mark => {
    const points = Array.from({ length: to / 3 + 1 }, (_, i) => at(3 * i, radiusOf(gain)));
    return { kind: "path", d: polyline(points, to === 360), stroke };
  });
  const rays = Array.from({ length: to / 30 + (to === 180 ? 1 : 0) }, (_, i): Mark => {
    const [x1, y1] = at(30 * i, radiusOf(frame.top - 2 * ringStep));
    const [x2, y2] = at(30 * i, radius);
    return { kind: "line", x1, y1, x2, y2, stroke };
  });
  return [...rings, ...rays];
}

/** dBi beside the rings along one ray; `shift` px moves the labels off it. */
export function ringLabels(frame: PolarFrame, angle: number, shift: Point, board: LabelBoard): Mark[] {
  const style = { role: "ink2", size: 12 * frame.s, halo: { role: "paper", width: 3 * frame.s } } as const;
  return ringsOf(frame).flatMap((gain, i) => {
    const [x, y] = frame.at(angle, frame.radiusOf(gain));
    const text = i === 0 ? `${fixedText(gain, 0)} dBi` : fixedText(gain, 0);
    return board.place(style, [{ lines: [text], x: x + shift[0], y: y + shift[1], anchor: "middle" }]);
  });
}

/** Points of an outline by gains at angles in degrees. */
export const outlineOf = (frame: PolarFrame, angles: readonly number[], gains: readonly number[]): Point[] =>
  angles.map((angle, i) => frame.at(angle, frame.radiusOf(gains[i]!)));

/** The antenna's pattern: soft fill, outline. */
export function patternMarks(frame: PolarFrame, outline: readonly Point[]): Mark[] {
  const { cx, cy, radius, s } = frame;
  const radial = { cx, cy, r: radius, centre: 0.04, edge: 0.34 };
  return [
    { kind: "path", id: "sky", d: polyline(outline, true), fill: { role: "field", radial } },
    { kind: "path", id: "sky", d: polyline(outline), stroke: { role: "field", width: 1.8 * s } },
  ];
}

/** The dipole it is held against: thin and dashed. */
export const referenceMarks = (frame: PolarFrame, outline: readonly Point[]): Mark[] => [
  {
    kind: "path",
    d: polyline(outline),
    stroke: { role: "ink2", width: 1.1 * frame.s, dash: `${5 * frame.s} ${4 * frame.s}` },
  },
];

/** A ring on the tip of a lobe. */
export const tipMark = ([x, y]: Point, s: number): Mark => ({
  kind: "circle",
  cx: x,
  cy: y,
  r: 3.4 * s,
  fill: { role: "paper" },
  stroke: { role: "fieldInk", width: 1.6 * s },
});
