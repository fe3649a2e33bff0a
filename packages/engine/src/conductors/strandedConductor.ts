/** A conductor of strands: as large as they lie, as conducting as their metal, as rough as their surface. */
import type { Metal, RoundConductor } from "./conductor";
import { type StrandRing, strandRing } from "./strandRing";

export interface StrandOptions {
  /** What covers every strand, from its core outwards, each in m of thickness: copper on steel, tin or silver on copper. */
  readonly coatings?: readonly { readonly metal: Metal; readonly thickness: number }[];
  /** m along the conductor for one turn of the outer strands; 12 overall diameters when left out (8 to 16: ASTM B8, from memory). */
  readonly turn?: number;
}

/**
 * Strands in circles: count, strands of the outer circle, radius of that circle in strand radii. Concentric lay round one, three
 * and no strand: overall 3, 4.155, 5, 6.155, 7, 9 strand diameters for 7, 12, 19, 27, 37, 61 (geometry; ASTM B8, from memory).
 */
const bundles: readonly (readonly [count: number, outer: number, circle: number])[] = [
  [2, 2, 1],
  [3, 3, 2 / Math.sqrt(3)],
  [7, 6, 2],
  [12, 9, 2 + 2 / Math.sqrt(3)],
  [19, 12, 4],
  [27, 15, 4 + 2 / Math.sqrt(3)],
  [37, 18, 6],
  [61, 24, 8],
];

/** Share of the circle round bunched strands that is metal (common practice, no source). */
const bunchedFill = 0.75;

function bundleOf(count: number): readonly [outer: number, circle: number] {
  const known = bundles.find(([n]) => n === count);
  if (known) return [known[1], known[2]];
  const circle = Math.max(Math.sqrt(count / bunchedFill) - 1, 1);
  return [Math.max(2, Math.floor(Math.PI / Math.asin(1 / circle))), circle];
}

/**
 * Conductor of `count` strands of `strandDiameter` m over their coatings, in concentric lay where the count is one of it, else
 * bunched. The effective radius comes from the field round the strands (0.939, 0.957, 0.969, 0.979 for 7, 12, 19, 37), the
 * resistance at small skin depth from the same field and the longer way of the outer strands, that at direct current from the
 * metal of all strands (roundConductorImpedance). One strand gives a solid wire. Strands in good contact; oxide and
 * crossings in a bunched lay add to it what is not known. RangeError for sizes that cannot be.
 */
export function strandedConductor(
  count: number,
  strandDiameter: number,
  metal: Metal,
  options: StrandOptions = {},
): RoundConductor {
  const coatings = options.coatings ?? [];
  const strandRadius = strandDiameter / 2;
  const covered = coatings.reduce((sum, c) => sum + c.thickness, 0);
  if (!(Number.isInteger(count) && count >= 1 && strandRadius > 0 && covered >= 0 && covered < strandRadius)) {
    throw new RangeError(
      `stranded conductor: ${count} strands of ${strandDiameter} m with coatings of ${covered} m; ` +
        "expected a whole number of strands, and coatings thinner than half a strand",
    );
  }
  const [outer, circle] = count === 1 ? [1, 0] : bundleOf(count);
  const radius = strandRadius * (circle + 1);
  const layers = [{ metal, outerRadius: radius - covered }];
  for (const coating of coatings) {
    layers.push({ metal: coating.metal, outerRadius: layers.at(-1)!.outerRadius + coating.thickness });
  }
  if (count === 1) return { form: "solid", layers, holeRadius: 0, effectiveRadiusRatio: 1, resistanceFactor: 1 };
  const turn = options.turn ?? 12 * 2 * radius;
  const ring = ringOf(outer, circle);
  return {
    form: "stranded",
    layers,
    holeRadius: 0,
    effectiveRadiusRatio: ring.effectiveRadiusRatio,
    resistanceFactor: ring.surfaceFactor * wayFactor(circle * strandRadius, turn),
    strands: { count, diameter: strandDiameter, turn },
  };
}

/** A catalogue asks for few kinds of strands many times. */
const rings = new Map<string, StrandRing>();

function ringOf(outer: number, circle: number): StrandRing {
  const key = `${outer} ${circle}`;
  const found = rings.get(key) ?? strandRing(outer, circle);
  if (rings.size < 64) rings.set(key, found);
  return found;
}

/** Length of a strand that winds at `radius` m over that of the conductor, one turn in `turn` m. */
const wayFactor = (radius: number, turn: number): number => Math.hypot(1, (2 * Math.PI * radius) / turn);
