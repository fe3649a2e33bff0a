import type { Answer } from "@feedpath/engine";
import { wordsOf } from "../words/names";
import { spanText, valueText } from "../words/numbers";
import { visibleLine } from "../words/visible";
import type { Block } from "./document";

/** Every value of the answer by its name in words, with its range where an input is uncertain. */
export function valuesTable({ values }: Answer): Block | null {
  const names = Object.keys(values);
  if (names.length === 0) return null;
  const words = (name: string) => ({ name, unit: "", numeric: false });
  return {
    kind: "folded",
    summary: "Every value of this answer",
    table: {
      caption: "Values by the names they have as data",
      columns: [words("name"), { ...words("value"), numeric: true }, { ...words("range"), numeric: true }],
      rows: names.map((name) => {
        const value = values[name]!;
        return [visibleLine(wordsOf(name)), visibleLine(valueText(value)), "re" in value ? "" : spanText(value)];
      }),
    },
  };
}
