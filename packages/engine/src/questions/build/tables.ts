/** The line over frequency, and the data sheet's points beside what the fit makes of them. */
import type { Column, Table } from "../../answer/answer";
import { attenuationParts } from "../../lines/attenuationParts";
import { lineConstants } from "../../lines/lineConstants";
import type { BuiltLine, LineRatings } from "../../lines/lineModel";
import { shieldLeak } from "./leaks";
import { type BuildResult, optionsOf, per100m } from "./study";

const mantissas = [1, 1.5, 2, 3, 5, 7];

/** Six round frequencies a decade with both ends, the frequency asked for and those of the sheet among them, Hz. */
function frequenciesOf({ input, from, to, sheet }: BuildResult): number[] {
  const first = Math.floor(Math.log10(from));
  const decades = Array.from({ length: Math.ceil(Math.log10(to)) - first + 1 }, (_, i) => 10 ** (first + i));
  const round = decades.flatMap((decade) => mantissas.map((m) => m * decade));
  const wanted = [from, to, input.frequency, ...(sheet?.points.map((p) => p.frequency) ?? [])];
  const inside = [...round, ...wanted].filter((f) => f >= from && f <= to);
  return [...new Set(inside)].sort((a, b) => a - b);
}

export function buildTables(result: BuildResult): Table[] {
  return [
    constantsTable(result),
    ...(result.sheet ? [sheetTable(result)] : []),
    ...publishedTable(result.input.chosen.entry.ratings?.publishedPower ?? []),
  ];
}

/** Mean power a published curve allows: shown beside, used nowhere. */
function publishedTable(points: NonNullable<LineRatings["publishedPower"]>): Table[] {
  if (points.length === 0) return [];
  return [
    {
      name: "publishedPower",
      axis: "frequency",
      columns: {
        frequency: { unit: "MHz", values: points.map((p) => p.frequency / 1e6) },
        meanPower: { unit: "W", values: points.map((p) => p.power) },
      },
    },
  ];
}

/** A sheet says nothing of resistance far below its points (Hz), unless it gives that at direct current. */
const knownFrom = ({ sheet }: BuildResult): number =>
  sheet === null || sheet.line.loopResistance !== undefined ? 0 : sheet.fit.from / 10;

/** By the deciding route; where both are known the other's columns are named after it, and the split is the build's. */
function constantsTable(result: BuildResult): Table {
  const { input, main, build } = result;
  const frequencies = frequenciesOf(result);
  const options = optionsOf(input);
  const column = (unit: string, of: (f: number) => number | null): Column => ({ unit, values: frequencies.map(of) });
  const constants = frequencies.map((f) => lineConstants(main.model, f, options));
  const known = knownFrom(result);
  const at = (unit: string, of: (c: (typeof constants)[number]) => number): Column => ({
    unit,
    values: constants.map((c) => (c.frequency < known ? null : of(c))),
  });
  const split = build ?? main;
  const parts = frequencies.map((f) => attenuationParts(split.model, f, options));
  const part = (name: "inner" | "outer" | "conductors" | "dielectric"): Column => ({
    unit: "dB/100 m",
    values: parts.map((p) => (p[name] === null ? null : per100m(p[name]))),
  });
  const other = build !== null && build.model !== main.model ? build : null;
  const others = other === null ? null : frequencies.map((f) => lineConstants(other.model, f, options));
  const root = Math.sqrt(1 / input.frequency) * per100m(main.constants.gamma.re);
  return {
    name: "lineConstants",
    axis: "frequency",
    columns: {
      frequency: column("MHz", (f) => f / 1e6),
      attenuation: at("dB/100 m", (c) => per100m(c.gamma.re)),
      ...(others && { attenuationByBuild: { unit: "dB/100 m", values: others.map((c) => per100m(c.gamma.re)) } }),
      ...(split.parts.outer
        ? { attenuationInInner: part("inner"), attenuationInOuter: part("outer") }
        : { attenuationInConductors: part("conductors") }),
      attenuationInDielectric: part("dielectric"),
      velocityFactor: at("1", (c) => c.velocityFactor),
      characteristicResistance: at("ohm", (c) => c.z0.re),
      characteristicReactance: at("ohm", (c) => c.z0.im),
      ...(others && {
        characteristicResistanceByBuild: { unit: "ohm", values: others.map((c) => c.z0.re) },
        characteristicReactanceByBuild: { unit: "ohm", values: others.map((c) => c.z0.im) },
        velocityFactorByBuild: { unit: "1", values: others.map((c) => c.velocityFactor) },
      }),
      attenuationByRoot: column("dB/100 m", (f) => root * Math.sqrt(f)),
      ...(result.leak && shieldColumns(build!.model, frequencies)),
    },
  };
}

function shieldColumns(line: BuiltLine, frequencies: readonly number[]): Record<string, Column> {
  const leaks = frequencies.map((f) => shieldLeak(line, f, 1));
  return {
    transferImpedance: { unit: "mΩ/m", values: leaks.map((l) => (l === null ? null : 1e3 * l.transferImpedance)) },
    screeningAttenuation: { unit: "dB", values: leaks.map((l) => (l === null ? null : l.screening)) },
  };
}

function sheetTable({ sheet, build, input }: BuildResult): Table {
  const points = sheet?.points ?? [];
  const column = (unit: string, of: (p: (typeof points)[number]) => number): Column => ({
    unit,
    values: points.map(of),
  });
  const byBuild = (f: number): number => per100m(lineConstants(build!.model, f, optionsOf(input)).gamma.re);
  return {
    name: "sheetPoints",
    axis: "frequency",
    columns: {
      frequency: column("MHz", (p) => p.frequency / 1e6),
      listedAttenuation: column("dB/100 m", (p) => 100 * p.listed),
      fittedAttenuation: column("dB/100 m", (p) => 100 * p.fitted),
      fitDeviation: column("%", (p) => 100 * (p.fitted / p.listed - 1)),
      ...(build && {
        attenuationByBuild: column("dB/100 m", (p) => byBuild(p.frequency)),
        buildDeviation: column("%", (p) => 100 * (byBuild(p.frequency) / (100 * p.listed) - 1)),
      }),
    },
  };
}
