/** The structure of a station while it is put together: wires, ports, and what could not be put in. */
import type { Complex } from "../numerics/complex";
import type { FeedGap, LumpedLoad, Point, SeriesGap, SoilContact, Wire } from "../wires/structure";
import type { LoopInStructure } from "./loopTuning";
import type { OutsideLine } from "./outside/outsideLine";

export interface AntennaRefusal {
  readonly why: string;
  readonly mend: string;
}

/** What bridges a gap, or the earth a contact leads to (there its whole impedance, electrode included). */
export interface PortClosing {
  readonly name: string;
  readonly kind: "choke" | "earth" | "insulator" | "capacitor";
  /** Ohm at an angular frequency; "open" where nothing bridges the gap. */
  readonly impedance: (angularFrequency: number) => Complex | "open";
}

/** Something the model had to take for granted. */
export interface ModelAssumption {
  readonly name: string;
  readonly value: string;
  readonly reason: string;
}

/** A small loop with its capacitor in a gap, set in the chain. */
export interface SmallLoop extends Omit<LoopInStructure, "feed" | "gap"> {
  /** Index into the structure's feeds. */
  readonly feed: number;
  /** Index into the structure's gaps. */
  readonly gap: number;
}

export interface Growing {
  readonly wires: Wire[];
  readonly feeds: FeedGap[];
  readonly loads: LumpedLoad[];
  readonly gaps: (SeriesGap & { readonly closing: PortClosing })[];
  readonly contacts: (SoilContact & { readonly closing: PortClosing })[];
  readonly notComputed: string[];
  readonly assumed: ModelAssumption[];
  readonly loops: SmallLoop[];
  /** Wire indices of each conductor near by. */
  readonly surrounding: Map<string, number[]>;
  readonly outside: OutsideLine[];
  /** Wires that lie on the soil or lead into it: they do not move when the antenna is raised. */
  readonly resting: Set<number>;
  refused: AntennaRefusal | null;
}

export const emptyGrowing = (): Growing => ({
  wires: [],
  feeds: [],
  loads: [],
  gaps: [],
  contacts: [],
  notComputed: [],
  assumed: [],
  loops: [],
  surrounding: new Map(),
  outside: [],
  resting: new Set(),
  refused: null,
});

/** Adds wires and gives their indices. */
export function addWires(growing: Growing, wires: readonly Wire[]): number[] {
  const first = growing.wires.length;
  growing.wires.push(...wires);
  return wires.map((_, i) => first + i);
}

/** Lists something taken for granted, once. */
export function assume(growing: Growing, name: string, value: string, reason: string): void {
  if (growing.assumed.some((a) => a.name === name && a.value === value)) return;
  growing.assumed.push({ name, value, reason });
}

export const samePoint = (a: Point, b: Point): boolean => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]) <= 1e-6;
