/** Names that are bare numbers would lose their order in the file: bands, positions and others keep the order written. */
import { fault } from "../building/build";
import type { Key } from "../reading/sourceText";
import type { Checked } from "./checked";

/** Keys whose maps go by names of the owner's choosing. */
const namedMaps = new Set([
  "bands",
  "antennas",
  "earths",
  "feeds",
  "elements",
  "positions",
  "branches",
  "passes",
  "lines",
]);

export function checkNumberNames(checked: Checked): void {
  visit(checked, checked.file, []);
}

function visit(checked: Checked, thing: unknown, path: readonly Key[]): void {
  if (typeof thing !== "object" || thing === null || "basis" in thing) return;
  if (Array.isArray(thing)) {
    thing.forEach((item, index) => {
      visit(checked, item, [...path, index]);
    });
    return;
  }
  const named = namedMaps.has(String(path.at(-1)));
  for (const [key, inner] of Object.entries(thing)) {
    if (named && /^\d+$/.test(key)) {
      const message = `The name "${key}" is a bare number. Give it a letter, such as a unit: ${key} m.`;
      checked.build.report([...path, key], "key", fault(message, "a name with a letter"));
    }
    visit(checked, inner, [...path, key]);
  }
}
