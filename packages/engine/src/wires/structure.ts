/** The moment method's input: straight round wires, feeds, loads and other ports, in metres over the plane z = 0. */
import type { RoundConductor } from "../conductors/conductor";
import type { SoilLayer } from "../ground/layeredSoil";
import type { Complex } from "../numerics/complex";

export type Point = readonly [number, number, number];

export interface Wire {
  readonly name: string;
  readonly from: Point;
  readonly to: Point;
  readonly radius: number;
  /** S/m, at the surface; Infinity for a lossless wire. */
  readonly conductivity: number;
  readonly permeability: number;
  /** Layers of a clad, plated or hollow wire, the outermost ending at `radius`. Left out: solid, of the metal above. */
  readonly section?: RoundConductor;
  /** One bar of a wire grid: short, thick for its length, meshed coarsely. Left out: an ordinary wire. */
  readonly bar?: true;
  /** Null when bare. */
  readonly insulation: Sleeve | null;
}

/** Dielectric sleeve of a wire: outer radius in metres, relative permittivity, loss tangent (none when left out). */
export interface Sleeve {
  readonly outerRadius: number;
  readonly permittivity: number;
  readonly lossTangent?: number;
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

/**
 * A place on a wire opened as a port, at a distance (m) from its `from` end; its current counts along the wire. What
 * bridges it (a choke, a bond) is joined outside of the moment method, so that another one needs no new solution.
 */
export interface SeriesGap {
  readonly name: string;
  readonly wire: number;
  readonly distance: number;
}

/**
 * Wire ends at `at` joined to the soil through an earth electrode, as a port: its current counts from the soil into the
 * wires. Over soil the current spreads through an electrode of arms of length `reach` (m) lying on the surface, whose own
 * impedance the solution reports, so that a stated one can take its place; over a perfect plane `at` lies on the plane.
 */
export interface SoilContact {
  readonly name: string;
  readonly at: Point;
  readonly reach: number;
}

export interface Structure {
  readonly wires: readonly Wire[];
  readonly feeds: readonly FeedGap[];
  readonly loads: readonly LumpedLoad[];
  /** None when left out, as `contacts`. */
  readonly gaps?: readonly SeriesGap[];
  readonly contacts?: readonly SoilContact[];
}

/** Names of all ports in the order of every port matrix and vector: feeds, gaps, contacts. */
export const portNames = ({ feeds, gaps = [], contacts = [] }: Structure): string[] =>
  [...feeds, ...gaps, ...contacts].map((port) => port.name);

/** Soil under the structure, resolved to numbers. `relativePermittivity` real, `conductivity` S/m. */
export type Soil =
  | { readonly kind: "free space" }
  | { readonly kind: "perfect" }
  | { readonly kind: "homogeneous"; readonly relativePermittivity: number; readonly conductivity: number }
  /** Level layers from the top; the lowest has no thickness. */
  | { readonly kind: "layered"; readonly layers: readonly SoilLayer[] };

/** Whether there is soil that takes in power: homogeneous, or in layers. */
export const isRealSoil = (soil: Soil): soil is Soil & { readonly kind: "homogeneous" | "layered" } =>
  soil.kind === "homogeneous" || soil.kind === "layered";
