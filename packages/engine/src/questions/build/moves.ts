/** A line model with its uncertain values moved one by one; those tied together move together. */
import type { LineModel } from "../../lines/lineModel";
import { significantNumber } from "../../quantity/format";
import { isQuantity, isUncertain, type Quantity } from "../../quantity/quantity";
import { replaceAt } from "../../station/uncertainInputs";

export interface LineMove {
  /** "impedance of RG-213/U", or the key it stands under: "velocity factor". */
  readonly name: string;
  /** "± 15 %", "−15 % to +10 %": how far it may lie off. */
  readonly says: string;
  readonly low: LineModel;
  readonly high: LineModel;
}

interface Found {
  readonly place: readonly (string | number)[];
  readonly quantity: Quantity;
}

/** Moves of all uncertain quantities of a model; empty where everything in it is exact. */
export function lineMoves(model: LineModel): LineMove[] {
  const groups = new Map<string, Found[]>();
  for (const found of uncertain(model, [])) {
    const name = found.quantity.tied ?? wordsOf(found.place);
    groups.set(name, [...(groups.get(name) ?? []), found]);
  }
  return [...groups].map(([name, found]) => ({
    name,
    says: spreadSays(found[0]!.quantity),
    low: moved(model, found, "low"),
    high: moved(model, found, "high"),
  }));
}

function spreadSays({ value, low, high }: Quantity): string {
  const [down, up] = [100 * (1 - low / value), 100 * (high / value - 1)].map((x) => significantNumber(x, 2));
  return down === up ? `± ${down} %` : `−${down} % to +${up} %`;
}

function uncertain(thing: unknown, place: Found["place"]): Found[] {
  if (typeof thing !== "object" || thing === null) return [];
  if (isQuantity(thing)) return isUncertain(thing) ? [{ place, quantity: thing }] : [];
  return Object.entries(thing).flatMap(([key, value]) =>
    uncertain(value, [...place, Array.isArray(thing) ? Number(key) : key]),
  );
}

const moved = (model: LineModel, found: readonly Found[], end: "low" | "high"): LineModel =>
  found.reduce<LineModel>((line, { place, quantity }) => {
    const value = quantity[end];
    return replaceAt(line, place, { ...quantity, value, low: value, high: value }) as LineModel;
  }, model);

/** The outermost key as words: all loss points are "loss". */
const wordsOf = (place: Found["place"]): string => String(place[0]).replace(/([A-Z])/g, (c) => ` ${c.toLowerCase()}`);
