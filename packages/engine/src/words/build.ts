/** Sentences of `build`: headline, verdict and advice. English. */
import type { Phrase } from "../answer/answer";
import { fixedNumber, ohms, plainNumber, significantNumber, watts, wholeWatts, withPrefix } from "../quantity/format";
import { linked, said } from "./phrases";

export interface BuildFacts {
  readonly designation: string;
  /** Hz, m, W. */
  readonly frequency: number;
  readonly length: number;
  readonly power: number;
  readonly powerThrough: number;
  /** dB/100 m. */
  readonly attenuation: number;
  /** dB/100 m over a new line, as the file says. */
  readonly excess: number;
  /** Of the attenuation, 0 to 1, in the conductors: of the route that splits it. */
  readonly conductorShare: number;
  readonly splitByBuild: boolean;
  readonly z0: { readonly re: number; readonly im: number };
  /** At the lowest frequency shown, by the route that reaches it. */
  readonly lowest: { readonly frequency: number; readonly z0: { readonly re: number; readonly im: number } };
  readonly velocityFactor: { readonly value: number; readonly low: number; readonly high: number };
  readonly loopResistance: number | null;
  readonly sheet: SheetWords | null;
  readonly build: BuildWords | null;
  readonly cutOff: { readonly frequency: number; readonly usualEstimate: number } | null;
  /** Whether voltages at which it fails are told. */
  readonly voltages: boolean;
  /** Velocity factor from a dip; null where nothing was measured. */
  readonly measured: {
    readonly value: number;
    readonly low: number;
    readonly high: number;
    /** By what is known of the line, at the dip. */
    readonly expected: { readonly value: number; readonly low: number; readonly high: number };
  } | null;
  /** K; `most` null where it is not known. */
  readonly temperature: { readonly asked: number; readonly most: number | null };
  /** Lines of the catalogue that measure alike, nearest first. */
  readonly similar: readonly string[];
  /** From two sweeps of the file, Hz, ohm, dB/m; null without. */
  readonly swept: {
    readonly frequency: number;
    readonly z0: { readonly re: number; readonly im: number };
    readonly attenuation: number;
    readonly velocityFactor: number;
  } | null;
}

export interface SheetWords {
  /** Hz. */
  readonly from: number;
  readonly to: number;
  /** The file's own, not of the catalogue. */
  readonly own: boolean;
  /** Relative. */
  readonly worstDeviation: number;
  readonly findings: readonly {
    readonly says: string;
    readonly suggestion: string | null;
    /** Hz, of the point it is about; null where it is about none or all. */
    readonly frequency: number | null;
  }[];
  /** Loss of the highest point, dB/100 m, and its frequency: what the root rule starts from. */
  readonly top: { readonly frequency: number; readonly attenuation: number };
}

export interface BuildWords {
  readonly kind: "coaxial" | "parallel-wire" | "twisted pair" | "wire over plane" | "four-wire" | "shielded pair";
  /** dB/100 m, and over the sheet's, relative; null where there is no sheet. */
  readonly attenuation: number;
  readonly powerThrough: number;
  readonly againstSheet: number | null;
  readonly impedance: number;
  /** Outer over inner diameter, or width over diameter, as measured with a caliper. */
  readonly ratio: number;
  /** Null where it does not fill all the field. */
  readonly permittivity: number | null;
  readonly insulation: string;
  /** Hz up to which a pair is followed; null for a coaxial line. */
  readonly pairsEnd: number | null;
}

/** What a nominal sheet is taken for, relative: MIL-DTL-17 lists. */
const nominalSheet = 0.15;

export const per100 = (attenuation: number): string => `${significantNumber(attenuation, 2)} dB per 100 m`;
export const hertz = (frequency: number): string => withPrefix(frequency, "Hz", 4);
export const lengthSays = (metres: number): string => `${significantNumber(metres, 3)} m`;
const wordCount = (text: string): number => text.split(/\s+/).length;

/** Below a watt in milliwatts; one decimal where the line takes little. */
const told = (f: BuildFacts, power: number): string =>
  f.power < 0.95 ? withPrefix(power, "W", 2) : watts(power).replace(/\.0 W$/, " W");

/** Both routes where they part below the sheet's points: neither is known to be right. */
function through(f: BuildFacts): string {
  const one = told(f, f.powerThrough);
  if (f.build === null || f.sheet === null || f.frequency >= f.sheet.from || !parts(f.build)) return one;
  const [least, most] = [f.powerThrough, f.build.powerThrough].sort((a, b) => a - b).map((power) => told(f, power));
  return least!.split(" ")[1] === most!.split(" ")[1] ? `${least!.split(" ")[0]} to ${most}` : one;
}

const parts = ({ againstSheet }: BuildWords): boolean => againstSheet !== null && Math.abs(againstSheet) > nominalSheet;
const into = (f: BuildFacts): string => (f.power < 0.95 ? withPrefix(f.power, "W", 2) : wholeWatts(f.power));

/** One decimal at most. */
const headlineLength = (length: number): string =>
  length < 0.95 ? `${plainNumber(100 * length, 0)} cm` : `${plainNumber(length, 1)} m`;

/** A designation of many words is left to the verdict: a headline has twelve at most. */
export const buildHeadline = (f: BuildFacts): Phrase[] => {
  const name = wordCount(f.designation) > 3 ? "this line" : f.designation;
  return [
    said(`Of ${into(f)}, `),
    linked(through(f), "powerThrough"),
    said(` ${/^1 m?W$/.test(through(f)) ? "passes" : "pass"} ${headlineLength(f.length)} of ${name}.`),
  ];
};

export function buildVerdict(f: BuildFacts): Phrase[] {
  const share = f.conductorShare > 0.995 ? "all of it" : `${plainNumber(100 * f.conductorShare, 0)} % of it`;
  const by = f.splitByBuild && byBuild(f).length === 0 ? "by its build " : "";
  return [
    said(`At ${hertz(f.frequency)}, matched, ${wordCount(f.designation) > 3 ? f.designation : "it"} takes `),
    linked(per100(f.attenuation), "attenuation"),
    ...(f.excess > 0 ? [said(" when new")] : []),
    ...byBuild(f),
    said(`, ${by}${share} in the metal`),
    ...overNew(f),
    said(". Its impedance there is "),
    linked(ohms(f.z0), "characteristicImpedance"),
    said("; its waves run at "),
    linked(fixedNumber(f.velocityFactor.value, 3), "velocityFactor"),
    said(" of the speed of light."),
    ...measuredPhrases(f),
    ...sweptPhrases(f),
    said(` ${buildNext(f)}`),
  ];
}

function overNew({ excess }: BuildFacts): Phrase[] {
  if (excess <= 0) return [];
  return [said(", and "), linked(`${significantNumber(excess, 2)} dB`, "attenuationOverNew"), said(" more now")];
}

function byBuild({ build }: BuildFacts): Phrase[] {
  if (build === null || !parts(build)) return [];
  return [
    said(" by its sheet and "),
    linked(significantNumber(build.attenuation, 2), "attenuationByBuild"),
    said(" dB by its build"),
  ];
}

function sweptPhrases({ swept }: BuildFacts): Phrase[] {
  if (swept === null) return [];
  return [
    said(` Your two sweeps say, at ${hertz(swept.frequency)}, `),
    linked(ohms(swept.z0), "measuredImpedance"),
    said(", "),
    linked(per100(100 * swept.attenuation), "measuredAttenuation"),
    said(" and "),
    linked(fixedNumber(swept.velocityFactor, 3), "velocityFactorOfSweeps"),
    said(" of the speed of light."),
  ];
}

function measuredPhrases({ measured }: BuildFacts): Phrase[] {
  if (measured === null) return [];
  const { value, low, high, expected } = measured;
  const meets = expected.high >= low && expected.low <= high;
  return [
    said(" Your dip says "),
    linked(`${fixedNumber(value, 3)} (${fixedNumber(low, 3)} to ${fixedNumber(high, 3)})`, "measuredVelocityFactor"),
    said(meets ? ": they agree." : ": they do not agree, and the measurement counts."),
  ];
}

/** Below the sheet's points: whether the build says the same, or the points are not far. */
function bornOut({ frequency, sheet, build }: BuildFacts): boolean {
  if (build !== null && build.againstSheet !== null) return !parts(build);
  return sheet !== null && frequency >= 0.5 * sheet.from;
}

/** Bounds of the velocity factor this close need no measurement for ordinary cuts: our rule. */
const closeEnough = 0.002;

export function buildNext(f: BuildFacts): string {
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
  ...(f.build !== null && f.build.againstSheet !== null && parts(f.build)
    ? [
        `Sheet and build disagree by ${plainNumber(Math.abs(100 * f.build.againstSheet), 0)} % at ${hertz(f.frequency)}: more than the 15 % that a nominal sheet is taken for.${outsidePoints(f)}`,
      ]
    : []),
];
