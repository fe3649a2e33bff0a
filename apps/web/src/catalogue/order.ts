/** Orders in which the lines can be listed; what is not known comes last. */
import type { LineRow } from "@feedpath/report";

export type Order = "family" | "loss" | "thickness" | "weight" | "voltage" | "price";

const measures: Readonly<Record<Exclude<Order, "family">, (row: LineRow) => number | null>> = {
  loss: ({ loss }) => loss?.value ?? null,
  thickness: ({ jacket }) => jacket,
  weight: ({ ratings }) => ratings.weight?.value ?? null,
  // The one that stands most comes first.
  voltage: ({ ratings }) => (ratings.voltage ? -ratings.voltage.value : null),
  price: ({ price }) => price?.perMetre ?? null,
};

export const orders: readonly { readonly order: Order; readonly says: string }[] = [
  { order: "family", says: "family" },
  { order: "loss", says: "least loss" },
  { order: "thickness", says: "thinnest" },
  { order: "weight", says: "lightest" },
  { order: "voltage", says: "most voltage" },
  { order: "price", says: "cheapest" },
];

/** Rows under a heading each; all under one where the order is another than by family. */
export function ordered(rows: readonly LineRow[], order: Order): readonly (readonly [string, readonly LineRow[]])[] {
  if (order === "family") {
    const families = new Map<string, LineRow[]>();
    for (const row of rows) families.set(row.family, [...(families.get(row.family) ?? []), row]);
    return [...families];
  }
  const measure = measures[order];
  const known = (row: LineRow): number => measure(row) ?? Number.POSITIVE_INFINITY;
  const says = orders.find((one) => one.order === order)?.says ?? "";
  return [[`${says} first`, [...rows].sort((a, b) => (known(a) === known(b) ? 0 : known(a) - known(b)))]];
}

/** Rows in which every word typed stands: in the name, the phrase about it, or the family. */
export function matching(rows: readonly LineRow[], typed: string): readonly LineRow[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  return rows.filter(({ designation, about, family }) => {
    const text = `${designation} ${about} ${family}`.toLowerCase();
    return words.every((word) => text.includes(word));
  });
}
