/** Words for structures: chains of wires, feeds, loads. Metres, hertz. */
import type { FeedGap, LumpedLoad, Point, Soil, Structure, Wire } from "@feedpath/engine";

export interface Study {
  readonly name: string;
  readonly structure: Structure;
  readonly soil: Soil;
  /** Hz */
  readonly frequency: number;
}

const copper = 58e6;

export const wire = (from: Point, to: Point, radius = 1e-3, more: Partial<Wire> = {}): Wire => ({
  name: `${from} to ${to}`,
  from,
  to,
  radius,
  conductivity: copper,
  permeability: 1,
  insulation: null,
  ...more,
});

/** Wires from point to point; closed when the first point comes again at the end. */
export const chain = (points: readonly Point[], radius = 1e-3, more: Partial<Wire> = {}): Wire[] =>
  points.slice(1).map((to, i) => wire(points[i]!, to, radius, more));

export const feed = (at: Point, from: readonly number[], into: readonly number[], name = "feed"): FeedGap => ({
  name,
  at,
  from,
  into,
});

export const structure = (
  wires: readonly Wire[],
  feeds: readonly FeedGap[],
  loads: readonly LumpedLoad[] = [],
): Structure => ({ wires, feeds, loads });

export const coil = (wireIndex: number, distance: number, henry: number, quality: number): LumpedLoad => ({
  wire: wireIndex,
  distance,
  impedance: (w) => ({ re: (w * henry) / quality, im: w * henry }),
});

export const capacitor = (wireIndex: number, distance: number, farad: number): LumpedLoad => ({
  wire: wireIndex,
  distance,
  impedance: (w) => ({ re: 0, im: -1 / (w * farad) }),
});

export const resistor = (wireIndex: number, distance: number, ohms: number): LumpedLoad => ({
  wire: wireIndex,
  distance,
  impedance: () => ({ re: ohms, im: 0 }),
});

/** Coil (with its Q) and capacitor side by side. */
export const trap = (
  wireIndex: number,
  distance: number,
  henry: number,
  farad: number,
  quality: number,
): LumpedLoad => ({
  wire: wireIndex,
  distance,
  impedance: (w) => {
    const [r, x] = [(w * henry) / quality, w * henry];
    const [g, b] = [r / (r * r + x * x), w * farad - x / (r * r + x * x)];
    return { re: g / (g * g + b * b), im: -b / (g * g + b * b) };
  },
});

/** Two arms from a feed in the middle, each ending at a point. */
export const armed = (middle: Point, first: Point, second: Point, radius = 1e-3, more: Partial<Wire> = {}): Structure =>
  structure([wire(first, middle, radius, more), wire(middle, second, radius, more)], [feed(middle, [0], [1])]);

const homogeneous = (relativePermittivity: number, conductivity: number): Soil => ({
  kind: "homogeneous",
  relativePermittivity,
  conductivity,
});

/** Classes of antenna handbooks: common practice, no source. */
export const soils = {
  free: { kind: "free space" },
  perfect: { kind: "perfect" },
  average: homogeneous(13, 0.005),
  poor: homogeneous(5, 0.001),
  good: homogeneous(20, 0.0303),
  sea: homogeneous(80, 5),
  layered: {
    kind: "layered",
    layers: [
      { relativePermittivity: 5, conductivity: 0.001, thickness: 2 },
      { relativePermittivity: 20, conductivity: 0.03, thickness: null },
    ],
  },
} as const satisfies Record<string, Soil>;
