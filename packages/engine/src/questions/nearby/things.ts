/** What stands near by: conductors and sheets of the surroundings, and antennas that do not transmit. */
import type { Antenna } from "../../station/antennaDescription";
import type { Station, Surrounding } from "../../station/station";
import { closestApproach, wireLength } from "../../wires/geometry";
import type { Wire } from "../../wires/structure";
import { saysOfAntenna } from "../../words/antenna";
import { saysOfConductor, saysOfSheet } from "../../words/nearbyThings";
import { antennasInUse } from "../common/inUse";
import type { Worked } from "../common/worked";

export interface Thing {
  readonly name: string;
  readonly kind: "conductor" | "sheet" | "antenna";
  readonly says: string;
  /** Indices into the structure of the station as it is. */
  readonly wires: readonly number[];
  /** m of wire in it. */
  readonly length: number;
  /** m to the nearest wire of the antenna in use. */
  readonly distance: number;
  /** An end of it stands on the soil. */
  readonly standing: boolean;
}

export type Conductor = Extract<Surrounding, { kind: "conductor" }>;
export type Sheet = Extract<Surrounding, { kind: "sheet" }>;

export interface NearBy {
  readonly things: readonly Thing[];
  /** Conductors that an antenna works against: they are part of it. */
  readonly own: readonly string[];
  readonly roofs: readonly Extract<Surrounding, { kind: "roof" }>[];
}

export function thingsNearBy(worked: Worked): NearBy {
  const { station, point } = worked;
  const { build } = point.antenna;
  const own = station.antennas.flatMap((a) => (a.against === null ? [] : [a.against]));
  const used = usedWires(worked);
  const thing = (kind: Thing["kind"], name: string, says: string, standing: boolean): Thing[] => {
    const wires = (kind === "antenna" ? build.antennaWires : build.thingWires).get(name) ?? [];
    if (wires.length === 0) return [];
    const made = wires.map((w) => build.structure.wires[w]!);
    const length = made.reduce((sum, w) => sum + wireLength(w), 0);
    return [{ name, kind, says, wires, length, distance: distanceOf(used, made), standing }];
  };
  const around = station.surroundings.flatMap((s): Thing[] => {
    if (s.kind === "roof" || own.includes(s.name)) return [];
    return s.kind === "conductor"
      ? thing("conductor", s.name, saysOfConductor(s), standsOnSoil(station, s))
      : thing("sheet", s.name, saysOfSheet(s), false);
  });
  const idle = idleAntennas(worked).flatMap((a) => thing("antenna", a.name, saysOfAntenna(a), false));
  return {
    things: [...around, ...idle].sort((a, b) => a.distance - b.distance),
    own: station.surroundings.flatMap((s) => (s.kind === "conductor" && own.includes(s.name) ? [s.name] : [])),
    roofs: station.surroundings.flatMap((s) => (s.kind === "roof" ? [s] : [])),
  };
}

export function idleAntennas({ station, point }: Pick<Worked, "station" | "point">): Antenna[] {
  const used = antennasInUse(station, point);
  return station.antennas.filter((a) => !used.includes(a));
}

/** Wires of the antennas that transmit. */
export function usedWires({ station, point }: Pick<Worked, "station" | "point">): Wire[] {
  const { build } = point.antenna;
  return antennasInUse(station, point).flatMap((a) =>
    (build.antennaWires.get(a.name) ?? []).map((w) => build.structure.wires[w]!),
  );
}

/** m between the nearest places of two groups of wires. */
export const distanceOf = (some: readonly Wire[], others: readonly Wire[]): number =>
  Math.min(...some.flatMap((a) => others.map((b) => closestApproach(a, b).distance)));

const onSoil = 1e-6;

const standsOnSoil = (station: Station, thing: Conductor): boolean =>
  station.ground.kind !== "free space" && [thing.points[0]!, thing.points.at(-1)!].some((p) => p[2].value <= onSoil);
