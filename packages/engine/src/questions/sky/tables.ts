/** Tables and the grid of `sky`: gain by angle, lobes with their first hops, minima, the two cuts, the whole sky. */
import type { Column, Grid, Lobe, Table } from "../../answer/answer";
import { firstHop } from "../../fields/firstHop";
import { directionInPlane } from "../../fields/patternCut";
import type { DrivenAntenna } from "../../wires/driveAntenna";
import type { Layers } from "./facts";
import { dbiAt, type PatternLobe, type SkyStudy, toDbi } from "./study";

const degree = Math.PI / 180;
const anglesTold = [5, 10, 15, 20, 30, 60, 90];

/** km of one hop; null in free space and for what does not rise. */
const hop = (free: boolean, elevation: number, layer: number): number | null =>
  free || elevation < 0 ? null : firstHop(Math.min(elevation, Math.PI / 2), layer) / 1000;

interface Compared {
  readonly driven: DrivenAntenna;
  readonly study: SkyStudy;
  readonly layers: Layers;
}

const isFree = ({ driven }: Compared): boolean => driven.solution.soil.kind === "free space";

/** Columns of gains in directions given in radians: the antenna, the dipole, the antenna over a perfect plane. */
function gainColumns({ driven, study }: Compared, directions: readonly { elevation: number; azimuth: number }[]) {
  const { reference, perfect } = study;
  const of = (one: DrivenAntenna): Column => ({
    unit: "dBi",
    values: directions.map((d) => dbiAt(one, d.elevation, d.azimuth)),
  });
  return {
    gain: of(driven),
    ...(typeof reference === "string" ? {} : { dipoleGain: of(reference.driven) }),
    ...(perfect === null || typeof perfect === "string" ? {} : { perfectPlaneGain: of(perfect) }),
  };
}

function angleTable(compared: Compared): Table {
  const { aim } = compared.study;
  const own = aim.elevation / degree;
  const known = own <= 0 || anglesTold.some((a) => Math.abs(a - own) < 0.05);
  const angles = known ? anglesTold : [...anglesTold, own].sort((a, b) => a - b);
  const directions = angles.map((a) => ({ elevation: a * degree, azimuth: aim.azimuth }));
  const hops = (layer: number): Column => ({
    unit: "km",
    values: directions.map((d) => hop(isFree(compared), d.elevation, layer)),
  });
  return {
    name: "gainByAngle",
    axis: "takeOffAngle",
    columns: {
      takeOffAngle: { unit: "deg", values: angles },
      ...gainColumns(compared, directions),
      ...(isFree(compared) ? {} : { firstHopByE: hops(compared.layers.e), firstHopByF: hops(compared.layers.f) }),
    },
  };
}

function extremeTable(name: string, axis: string, found: readonly PatternLobe[], more: Table["columns"]): Table {
  return {
    name,
    axis,
    columns: {
      [axis]: { unit: "1", values: found.map((_, i) => i + 1) },
      elevation: { unit: "deg", values: found.map((l) => l.elevation / degree) },
      azimuth: { unit: "deg", values: found.map((l) => l.azimuth / degree) },
      gain: { unit: "dBi", values: found.map((l) => toDbi(l.gain)) },
      ...more,
    },
  };
}

/** Lobes of the vertical plane, the strongest first. */
export const lobesOf = (study: SkyStudy): readonly PatternLobe[] =>
  study.upright.filter((l) => l.kind === "lobe").sort((a, b) => b.gain - a.gain);

function lobeTable(compared: Compared): Table {
  const lobes = lobesOf(compared.study);
  const hops = (layer: number): Column => ({
    unit: "km",
    values: lobes.map((l) => hop(isFree(compared), l.elevation, layer)),
  });
  const more: Table["columns"] = isFree(compared)
    ? {}
    : { firstHopByE: hops(compared.layers.e), firstHopByF: hops(compared.layers.f) };
  return extremeTable("lobesUpwards", "lobe", lobes, more);
}

/** Every `step` degrees through the zenith: half a turn over ground, the whole in free space. */
function elevationPattern(compared: Compared): Table {
  const count = isFree(compared) ? 361 : 181;
  const angles = Array.from({ length: count }, (_, i) => i);
  const directions = angles.map((a) => directionInPlane(a * degree, compared.study.aim.azimuth));
  const { perfectPlaneGain: _, ...gains } = gainColumns(compared, directions) as Record<string, Column>;
  return {
    name: "elevationPattern",
    axis: "elevation",
    columns: { elevation: { unit: "deg", values: angles }, ...gains },
  };
}

function azimuthPattern(compared: Compared): Table {
  const { aim } = compared.study;
  const angles = Array.from({ length: 181 }, (_, i) => 2 * i);
  const directions = angles.map((a) => ({ elevation: aim.elevation, azimuth: a * degree }));
  const { perfectPlaneGain: _, ...gains } = gainColumns(compared, directions) as Record<string, Column>;
  return { name: "azimuthPattern", axis: "azimuth", columns: { azimuth: { unit: "deg", values: angles }, ...gains } };
}

export function skyTables(compared: Compared): readonly Table[] {
  const { study } = compared;
  const minima = [...study.upright, ...study.level].filter((l) => l.kind === "minimum");
  const round = study.level.filter((l) => l.kind === "lobe");
  return [
    angleTable(compared),
    ...(lobesOf(study).length > 0 ? [lobeTable(compared)] : []),
    ...(round.length > 0 ? [extremeTable("lobesAround", "lobe", round, {})] : []),
    ...(minima.length > 0 ? [extremeTable("minima", "minimum", minima, {})] : []),
    elevationPattern(compared),
    azimuthPattern(compared),
  ];
}

/** Thousandths of a dB. */
const short = (value: number): number => Math.round(1000 * value) / 1000;

export function skyGrid({ sky }: SkyStudy): Grid {
  const axis = (name: string, values: readonly number[]) => ({
    name,
    unit: "deg",
    values: values.map((v) => Math.round(v / degree)),
  });
  return {
    name: "sky",
    rows: axis("elevation", sky.elevations),
    columns: axis("azimuth", sky.azimuths),
    value: "gain",
    unit: "dBi",
    values: sky.gains.map((row) => row.map((g) => short(toDbi(g)))),
  };
}

export const lobeList = (study: SkyStudy): Lobe[] =>
  lobesOf(study).map((l) => ({
    elevation: l.elevation / degree,
    azimuth: l.azimuth / degree,
    gain: toDbi(l.gain),
    width: l.width === null ? null : l.width / degree,
  }));
