/** Where a part or a component stands, and how its gaps are filled. */
import type { Quantity } from "@feedpath/engine";
import type { KeyPath } from "../reading/sourceText";
import type { DimensionName } from "../units/dimensions";
import { type Build, fill, fillQuantity } from "./build";

/** Where a part stands: in the file, and in the station. */
export interface Spot {
  readonly build: Build;
  readonly path: KeyPath;
  readonly place: string;
  readonly name: string;
}

/** An antenna in the name of an assumption: "the antenna" where the file has one without a name. */
export const theAntenna = (name: string): string => (name === "antenna" ? "the antenna" : name);

/** Fills a number of a part. */
export function fillNumber(
  spot: Spot,
  written: Quantity | undefined,
  dimension: DimensionName,
  key: string,
  what: string,
  value: number,
  reason: string,
) {
  return fillQuantity(spot.build, written, dimension, {
    place: `${spot.place}.${key}`,
    name: `${what} of ${spot.name}`,
    value,
    reason,
  });
}

/** Fills a word of a part. */
export function fillWord<Word extends string>(
  spot: Spot,
  written: Word | undefined,
  key: string,
  what: string,
  value: Word,
  reason: string,
): Word {
  return fill<Word>(spot.build, written, {
    place: `${spot.place}.${key}`,
    name: `${what} of ${spot.name}`,
    value,
    says: value,
    reason,
  });
}

/** Reason for a loss that is not given. */
export const noLoss = "not given: taken as none";
