/** Outlines of a pair in sleeves with a web between, cut into straight panels: one quadrant, the others are its images. */

/** Metres: radius of the metal and of the sleeves, spacing between centres, and the web's thickness (0: none). */
export interface WebbedPair {
  readonly radius: number;
  readonly outerRadius: number;
  readonly spacing: number;
  readonly thickness: number;
}

/** A straight panel from one point to another; the outward normal lies to the right. */
export interface Panel {
  readonly x: number;
  readonly y: number;
  /** Unit vector along it, and its length in m. */
  readonly alongX: number;
  readonly alongY: number;
  readonly length: number;
  /** On the metal's surface; otherwise on that of the dielectric. */
  readonly metal: boolean;
  /** 1/m: of the circle about the wire's axis that a panel of a sleeve stands for; 0 for others. */
  readonly curvature: number;
}

const [onMetal, onSleeve, onWeb] = [24, 32, 28];

/** Panels in x > 0, y > 0: half the wire at x = spacing/2, then the outline of the dielectric from the far end to the middle. */
export function webbedPanels(pair: WebbedPair): Panel[] {
  check(pair);
  const { radius, outerRadius, spacing, thickness } = pair;
  const centre = spacing / 2;
  // A polygon of the circle's own area.
  const step = Math.PI / onMetal;
  const corner = radius * Math.sqrt(step / Math.sin(step));
  const metal = Array.from({ length: onMetal + 1 }, (_, i) => pointAt(centre, corner, i * step));
  const joint = Math.PI - Math.asin(Math.min(1, thickness / (2 * outerRadius)));
  const sleeve = graded(onSleeve).map((s) => pointAt(centre, outerRadius, s * joint));
  const [x, y] = sleeve.at(-1)!;
  const web = graded(onWeb).map((s): Point => [x * (1 - s), y]);
  return [
    ...panels(metal, true, 0),
    ...panels(sleeve, false, 1 / outerRadius),
    ...(thickness > 0 ? panels(web, false, 0) : []),
  ];
}

type Point = readonly [x: number, y: number];

const pointAt = (centre: number, radius: number, angle: number): Point => [
  centre + radius * Math.cos(angle),
  radius * Math.sin(angle),
];

/** 0 to 1, closer towards both ends, where the field changes fast. */
const graded = (count: number): number[] =>
  Array.from({ length: count + 1 }, (_, i) => (1 - Math.cos((Math.PI * i) / count)) / 2);

const panels = (points: readonly Point[], metal: boolean, curvature: number): Panel[] =>
  points.slice(1).map(([toX, toY], i) => {
    const [x, y] = points[i]!;
    const length = Math.hypot(toX - x, toY - y);
    return { x, y, alongX: (toX - x) / length, alongY: (toY - y) / length, length, metal, curvature };
  });

function check({ radius, outerRadius, spacing, thickness }: WebbedPair): void {
  const good = radius > 0 && outerRadius > radius && spacing > 2 * outerRadius;
  if (good && thickness >= 0 && thickness <= 2 * outerRadius) return;
  throw new RangeError(
    `pair with a web: wires of ${radius} m radius, sleeves of ${outerRadius} m radius, ${spacing} m between centres, web ${thickness} m thick; ` +
      "expected sleeves round the wires that do not touch, and a web no thicker than they are",
  );
}
