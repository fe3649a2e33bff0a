/** A line of the catalogue: an entry with its family, and with sources that say which of its values they stand for. */
import type { LineEntry, LineRatings } from "@feedpath/engine";

/** Families in the order they are listed. */
export const lineFamilies = [
  "MIL-DTL-17, 50 ohm, polyethylene",
  "MIL-DTL-17, 75 and 93 ohm, polyethylene",
  "MIL-DTL-17, PTFE",
  "75-ohm drop and trunk",
  "50-ohm foam, foil and braid",
  "50-ohm corrugated, foam",
  "50-ohm corrugated, air",
  "ribbon and window line",
  "open-wire line",
] as const;
export type LineFamily = (typeof lineFamilies)[number];

export type SourcedValue = "impedance" | "velocity factor" | "loss" | "build" | "jacket" | keyof LineRatings;

export interface LineSource {
  /** The values of the entry that this speaks of. */
  readonly of: readonly SourcedValue[];
  readonly value: string;
  readonly source: string;
  readonly status: string;
}

export interface CatalogueLine extends LineEntry {
  readonly family: LineFamily;
  /** A phrase for people: size, insulation, what it is used for. */
  readonly about: string;
  readonly sources: readonly LineSource[];
}
