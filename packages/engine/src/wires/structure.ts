/** The moment method's input: straight round wires, feeds and loads, in metres over the plane z = 0. Types only. */
import type { Complex } from "../numerics/complex";

export type Point = readonly [number, number, number];

export interface Wire {
  readonly name: string;
  readonly from: Point;
  readonly to: Point;
  readonly radius: number;
  /** S/m; Infinity for a lossless wire. */
  readonly conductivity: number;
  readonly permeability: number;
  /** Thin dielectric sleeve: outer radius in metres and relative permittivity; null when bare. */
  readonly insulation: { readonly outerRadius: number; readonly permittivity: number } | null;
}

/**
 * A feed gap at a junction: the source drives current out of the wires `from` side into the wires of `into`.
 * Both lists hold wire indices that have an end at `at`; other wires that meet there belong to `into`.
 */
export interface FeedGap {
  readonly name: string;
  readonly at: Point;
  readonly from: readonly number[];
  readonly into: readonly number[];
}

/** Lumped series impedance on a wire at a distance (m) from its `from` end. */
export interface LumpedLoad {
  readonly wire: number;
  readonly distance: number;
  readonly impedance: (angularFrequency: number) => Complex;
}

export interface Structure {
  readonly wires: readonly Wire[];
  readonly feeds: readonly FeedGap[];
  readonly loads: readonly LumpedLoad[];
}

/** Soil under the structure, resolved to numbers. `relativePermittivity` real, `conductivity` S/m. */
export type Soil =
  | { readonly kind: "free space" }
  | { readonly kind: "perfect" }
  | { readonly kind: "homogeneous"; readonly relativePermittivity: number; readonly conductivity: number };
