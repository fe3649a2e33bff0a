/** What the pictures of a pattern read from the answer to `sky`. Degrees, dBi, km. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, numericParameter, requiredTable } from "../kit/answerValues";
import { fixedText, plainText, withUnit } from "../kit/numberText";

export interface Extreme {
  readonly elevation: number;
  readonly azimuth: number;
  readonly gain: number;
  /** First hops by the E and the F layer; none in free space. */
  readonly hops: readonly [number, number] | null;
}

const find = (answer: Answer, name: string): Table | undefined => answer.tables.find((one) => one.name === name);

function extremesOf(table: Table | undefined): Extreme[] {
  if (!table) return [];
  const [elevation, azimuth, gain] = ["elevation", "azimuth", "gain"].map((name) => numbersOf(table, name));
  const { firstHopByE, firstHopByF } = table.columns;
  return elevation!.map((e, i) => {
    const [byE, byF] = [firstHopByE?.values[i] ?? null, firstHopByF?.values[i] ?? null];
    return {
      elevation: e,
      azimuth: azimuth![i]!,
      gain: gain![i]!,
      hops: byE === null || byF === null ? null : [byE, byF],
    };
  });
}

/** Lobes of the vertical plane, the strongest first. */
export const lobesUpwards = (answer: Answer): Extreme[] => extremesOf(find(answer, "lobesUpwards"));
export const lobesAround = (answer: Answer): Extreme[] => extremesOf(find(answer, "lobesAround"));
export const minima = (answer: Answer): Extreme[] => extremesOf(find(answer, "minima"));

export interface Cut {
  readonly angles: readonly number[];
  readonly gains: readonly number[];
  readonly dipole: readonly number[] | null;
}

export function cutOf(answer: Answer, name: "elevationPattern" | "azimuthPattern"): Cut {
  const table = requiredTable(answer, name);
  return {
    angles: numbersOf(table, table.axis),
    gains: numbersOf(table, "gain"),
    dipole: table.columns.dipoleGain ? numbersOf(table, "dipoleGain") : null,
  };
}

/** A minimum this far (dB) below the strongest gain of its cut is called a null. */
const nullDepth = 15;
export const isNull = (gain: number, most: number): boolean => gain < most - nullDepth;

export const azimuthOfCut = (answer: Answer): number => numericParameter(answer, "azimuth") ?? 0;
export const elevationOfCut = (answer: Answer): number => numericParameter(answer, "elevation") ?? 0;

/** Whether an extreme lies on the far side of the vertical plane; the zenith counts to the near one. */
export const isBehind = (answer: Answer, { azimuth, elevation }: Extreme): boolean =>
  elevation < 89.99 && Math.cos(((azimuth - azimuthOfCut(answer)) * Math.PI) / 180) < 0;

export const upwardsText = (elevation: number): string =>
  elevation > 89
    ? "straight up"
    : elevation < 0
      ? `${fixedText(-elevation, 0)}° down`
      : `${fixedText(elevation, 0)}° up`;
export const gainText = (dbi: number): string => withUnit(fixedText(dbi, 1), "dBi");
export const kilometresText = (km: number): string =>
  withUnit(plainText(km >= 100 ? 10 * Math.round(km / 10) : km, 0), "km");

const points = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"];
export const pointOfCompass = (azimuth: number): string =>
  points[Math.round((((azimuth % 360) + 360) % 360) / 45) % 8]!;
/** "52° (north-east)". */
export const bearingText = (azimuth: number): string =>
  `${fixedText(((Math.round(azimuth) % 360) + 360) % 360, 0)}° (${pointOfCompass(azimuth)})`;
