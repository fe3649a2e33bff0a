/** What a file says of a line beside its build. */
import type { LineEntry, LineRatings, Quantity } from "@feedpath/engine";
import type { FileOwnLine } from "../schema/line";

type Rated = Pick<LineEntry, "about" | "jacketDiameter" | "price"> & { readonly ratings: LineRatings };

/** The file's keys and the engine's. */
export const ratingNames = {
  voltage: "voltage",
  "greatest temperature": "temperature",
  weight: "weight",
  "bend radius": "bendRadius",
  capacitance: "capacitance",
  "loop resistance": "loopResistance",
} as const satisfies Readonly<Record<string, keyof LineRatings>>;

export function ratingsOf(line: FileOwnLine): Rated {
  const keys = Object.keys(ratingNames) as (keyof typeof ratingNames)[];
  const given = keys.flatMap((key): (readonly [string, Quantity])[] => {
    const value = line[key];
    return value ? [[ratingNames[key], value]] : [];
  });
  return {
    ...(line.note === undefined ? {} : { about: line.note }),
    ...(line.jacket ? { jacketDiameter: line.jacket.value } : {}),
    ...(line.price ? { price: line.price } : {}),
    ratings: Object.fromEntries(given),
  };
}
