/** The tables `height` and `lobesByHeight`. */
import type { Column, Table } from "../../answer/answer";
import { deepest, type HeightLobes, type HeightPoint } from "./point";
import { heightKey, type Study } from "./study";

const units: Readonly<Record<keyof HeightPoint, string>> = {
  height: "m",
  radiatedPower: "W",
  powerIntoAntenna: "W",
  heatInSoil: "W",
  swrAtTransmitter: "1",
  swrAtFeedPoint: "1",
  feedPointResistance: "ohm",
  feedPointReactance: "ohm",
  gainLow: "dBi",
  gainHigh: "dBi",
  maximumGain: "dBi",
  elevationOfMaximum: "deg",
};

export function heightTable(study: Study): Table {
  const columns: Record<string, Column> = {};
  for (const name of Object.keys(units) as (keyof HeightPoint)[]) {
    const values = study.points.map((p) => (Number.isFinite(p[name]) ? p[name] : null));
    const end = (numbers: Study["low"]) => study.points.map((p) => numbers[heightKey(name, p.height)] ?? p[name]);
    const drawn = study.effects.length > 0 && name !== "height" && !values.includes(null);
    columns[name] = drawn
      ? { unit: units[name], values, low: end(study.low), high: end(study.high) }
      : { unit: units[name], values };
  }
  return { name: "height", axis: "height", columns };
}

/** Lobes told at most, from the horizon up; a very high antenna has more of them than anyone reads. */
const mostLobes = 6;
const degree = Math.PI / 180;

/**
 * Elevation and gain of every lobe, and elevation of the minimum between it and the next, in the plane of the aim. Counted
 * from the horizon up: a lobe that is born at the zenith takes the next number and keeps it. None where there are no lobes.
 */
export function lobeTable({ lobes }: Study): Table[] {
  const most = Math.min(mostLobes, Math.max(0, ...lobes.map((l) => ofKind(l, "lobe").length)));
  if (most === 0) return [];
  const column = (unit: string, value: (at: HeightLobes) => number | null): Column => ({
    unit,
    values: lobes.map(value),
  });
  const columns: Record<string, Column> = { height: column("m", (l) => l.height) };
  for (let i = 0; i < most; i++) {
    columns[`elevationOfLobe${i + 1}`] = column("deg", (l) => angleOf(ofKind(l, "lobe")[i]));
    columns[`gainOfLobe${i + 1}`] = column("dBi", (l) => {
      const lobe = ofKind(l, "lobe")[i];
      return lobe ? Math.max(deepest, 10 * Math.log10(lobe.gain)) : null;
    });
  }
  for (let i = 0; i + 1 < most; i++)
    columns[`minimumAfterLobe${i + 1}`] = column("deg", (l) => angleOf(ofKind(l, "minimum")[i]));
  return [{ name: "lobesByHeight", axis: "height", columns }];
}

const ofKind = ({ extremes }: HeightLobes, kind: "lobe" | "minimum") => extremes.filter((e) => e.kind === kind);
const angleOf = (extreme: { readonly angle: number } | undefined): number | null =>
  extreme ? Math.min(90, extreme.angle / degree) : null;
