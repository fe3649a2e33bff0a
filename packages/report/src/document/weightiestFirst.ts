/** The order of what was assumed: what is known to move the result, then what an owner may know better, then mere form. */
import type { Answer } from "@feedpath/engine";

type Assumptions = Answer["assumptions"];

/** A taut wire, a place that the others are counted from, ends left level: true of most stations, so told last. */
const formOnly = /\.(at|sag|endsHeight)$/;
/** Said by the engine of what no result depends on. */
const drawingOnly = /for the drawing only$/;

function rank({ place, reason }: Assumptions[number], moving: ReadonlySet<string>): number {
  if (moving.has(place)) return 0;
  return formOnly.test(place) || drawingOnly.test(reason) ? 2 : 1;
}

/**
 * The same assumptions, none left out: those moved alone by the engine first, form last, otherwise as they came.
 * An input of two values that move together (a soil) stands in `uncertainties` under either of its places.
 */
export function weightiestFirst({ assumptions, uncertainties }: Pick<Answer, "assumptions" | "uncertainties">) {
  const soil = uncertainties.some(({ place }) => place.startsWith("ground."));
  const moving = new Set(uncertainties.map(({ place }) => place));
  if (soil) moving.add("ground.conductivity").add("ground.permittivity");
  return assumptions.toSorted((a, b) => rank(a, moving) - rank(b, moving));
}
