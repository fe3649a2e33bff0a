/** What to do, what would settle it, cautions and what `build` leaves out. English. */
import { plainNumber, significantNumber } from "../quantity/format";
import { type BuildFacts, hertz, routesPart } from "./buildFacts";

/** Below the sheet's points: whether the build says the same, or the points are not far. */
function bornOut({ frequency, sheet, build }: BuildFacts): boolean {
  if (build !== null && build.againstSheet !== null) return !routesPart(build);
  return sheet !== null && frequency >= 0.5 * sheet.from;
}

/** Bounds of the velocity factor this close need no measurement for ordinary cuts: our rule. */
const closeEnough = 0.002;

export function buildNext(f: BuildFacts): string {
  if (f.attenuation === 0) return "Name the metals to see what a real line takes.";
  const wrong = f.sheet?.findings[0];
  if (wrong) {
    const where = wrong.frequency === null ? "" : ` at ${hertz(wrong.frequency)}`;
    return `Check its data sheet${where} first: ${uncapital(wrong.suggestion ?? wrong.says)}`;
  }
  if (f.sheet && f.frequency < f.sheet.from && !bornOut(f)) {
    const measure = `Measure a length at ${hertz(f.frequency)}: the sheet begins at ${hertz(f.sheet.from)}`;
    return f.build === null
      ? `${measure}, and thin foil or clad steel may take more below.`
      : `${measure}, and sheet and build part below.`;
  }
  if (f.measured) return "Cut by your own dip: it holds for this reel, and a printed value for the make.";
  if (f.swept) return "Go by your sweeps where they differ: they hold for this piece of line.";
  const { value, low, high } = f.velocityFactor;
  if (f.build !== null && f.build.pairsEnd !== null && f.build.kind !== "shielded pair") {
    return "Keep it dry and two or three of its widths away from metal: either changes these constants more than anything told here.";
  }
  const spread = (high - low) / 2 / value;
  if (f.sheet === null) {
    const alike =
      f.similar.length === 0 ? "" : ` Nearest of the catalogue by its sizes: ${f.similar.slice(0, 3).join(", ")}.`;
    return `Confirm the attenuation by a sweep: from dimensions alone it is good to about 15 %.${alike}`;
  }
  return spread > closeEnough
    ? `Cut by measurement where an electrical length matters: the velocity factor is known within ${significantNumber(100 * spread, 1)} %.`
    : "Take these constants as they are; only connectors and age come on top.";
}

const uncapital = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

export const buildSettles =
  "Two sweeps of one piece, its far end open and shorted: the root of the product of both impedances is the characteristic impedance, the dips give the velocity factor, and half the return loss of the open piece is its loss.";

export const buildNotCovered = (f: BuildFacts): string[] => [
  ...(f.cutOff === null
    ? []
    : [
        `Frequencies from ${hertz(f.cutOff.frequency)} on, where a second mode (TE11) can travel: the table ends there.`,
      ]),
  ...(f.sheet && !f.sheet.own
    ? ["Cable sold under this name that does not meet the sheet: measure what you have."]
    : []),
  ...(f.build !== null && f.build.pairsEnd !== null
    ? ["Metal, rain and dirt near the wires of a pair, and what it sends where it bends or stands unequally."]
    : ["Connectors, bends, crushed places and water inside."]),
  "Mismatch: all losses here are those of the line ended in its own impedance; `watts` works with the real one.",
];

/** Thin copper over steel, strands, foil: what a fit of points at high frequency cannot know. */
const outsidePoints = ({ sheet, frequency }: BuildFacts): string =>
  sheet !== null && frequency < sheet.from
    ? ` Below the sheet's points (${hertz(sheet.from)} and up) the build is the better guide.`
    : "";

const celsius = (kelvin: number): string => `${plainNumber(kelvin - 273.15, 0)} °C`;

export const buildCautions = (f: BuildFacts): string[] => [
  ...(f.temperature.most !== null && f.temperature.asked > f.temperature.most
    ? [
        `At ${celsius(f.temperature.asked)} the insulation is above the ${celsius(f.temperature.most)} it bears for long: it softens and the inner conductor wanders, which these numbers do not tell.`,
      ]
    : []),
  ...(f.voltages
    ? [
        "Breakdown and glow are told to show the margin, not to be used: stay below a line's working voltage, and keep bare conductors out of reach.",
      ]
    : []),
  ...(f.build !== null && f.build.pairsEnd !== null && f.frequency > f.build.pairsEnd
    ? [
        `From ${hertz(f.build.pairsEnd)} on the wires stand more than a tenth of a wave apart: the pair sends, which is not in these numbers.`,
      ]
    : []),
  ...(f.sheet?.findings ?? []).map(({ says, suggestion }) => (suggestion === null ? says : `${says} ${suggestion}`)),
  ...(f.build !== null && f.build.againstSheet !== null && routesPart(f.build)
    ? [
        `Sheet and build disagree by ${plainNumber(Math.abs(100 * f.build.againstSheet), 0)} % at ${hertz(f.frequency)}: more than the 15 % that a nominal sheet is taken for.${outsidePoints(f)}`,
      ]
    : []),
];
