/** The table `height`. */
import type { Column, Table } from "../../answer/answer";
import { type HeightPoint, heightKey, type Study } from "./study";

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
