/** No line is hotter than what it is made of bears for long. */
import type { LineEntry } from "@feedpath/engine";
import { fault } from "../building/build";
import { formatAmount } from "../units/formatQuantity";
import type { Checked } from "./checked";
import { partsWithPlaces } from "./references";

export function checkLineTemperatures(checked: Checked): void {
  for (const { part, path } of partsWithPlaces(checked)) {
    if (part.kind !== "line" || !part.temperature) continue;
    const most = greatestOf(part.line);
    if (most === null || part.temperature.low <= most.temperature) continue;
    const [is, bears] = [part.temperature.low, most.temperature].map((value) => formatAmount(value, "temperature"));
    const message = `${part.name} would be at ${is}: ${most.what} bears ${bears} for long, so no loss is computed for it there.`;
    checked.build.report([...path, "temperature"], "value", fault(message, `at most ${bears}`));
  }
}

/** K that a line bears for long, by its rating or else by its dielectric; null where neither is known. */
function greatestOf({ ratings, build, designation }: LineEntry) {
  if (ratings?.temperature) return { temperature: ratings.temperature.high, what: `the line ${designation}` };
  const dielectric = build && "dielectric" in build ? build.dielectric : null;
  if (dielectric?.greatestTemperature === undefined) return null;
  return {
    temperature: dielectric.greatestTemperature,
    what: `its ${dielectric.name === "own" ? "dielectric" : dielectric.name}`,
  };
}
