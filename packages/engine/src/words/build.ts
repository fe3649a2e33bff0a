/** Headline and verdict of `build`. English. */
import type { Phrase } from "../answer/answer";
import { fixedNumber, ohms, plainNumber, significantNumber, watts, wholeWatts, withPrefix } from "../quantity/format";
import { buildNext } from "./buildAdvice";
import { type BuildFacts, hertz, per100, routesPart } from "./buildFacts";
import { linked, said } from "./phrases";

const wordCount = (text: string): number => text.split(/\s+/).length;

/** Below a watt in milliwatts; one decimal where the line takes little. */
function told(f: BuildFacts, power: number): string {
  if (power < 1e-6 * f.power) return "next to nothing";
  return f.power < 0.95 ? withPrefix(power, "W", 2) : watts(power).replace(/\.0 W$/, " W");
}

/** A smaller difference of what passes, over the power, is not told. */
const worthTelling = 0.01;

/** "85.5 to 92.4": both routes where they part below the sheet's points and neither is known to be right; else null. */
function throughBoth(f: BuildFacts): string | null {
  const { build, sheet, power } = f;
  if (build === null || sheet === null || f.frequency >= sheet.from || !routesPart(build)) return null;
  const [least, most] = [f.powerThrough, build.powerThrough].sort((x, y) => x - y) as [number, number];
  if (most - least < worthTelling * power) return null;
  const [low, high] = [told(f, least).split(" "), told(f, most).split(" ")];
  const sameUnit = low[1] === high[1] && low[1] === into(f).split(" ")[1];
  return sameUnit && low[0] !== high[0] ? `${low[0]} to ${high[0]}` : null;
}

const into = (f: BuildFacts): string => (f.power < 0.95 ? withPrefix(f.power, "W", 2) : wholeWatts(f.power));

/** One decimal at most. */
function headlineLength(length: number): string {
  if (length >= 1000) return `${plainNumber(length / 1000, 1)} km`;
  return length < 0.95 ? `${plainNumber(100 * length, 0)} cm` : `${plainNumber(length, 1)} m`;
}

/** A designation of many words is left to the verdict: a headline has twelve at most. */
export function buildHeadline(f: BuildFacts): Phrase[] {
  const named = (most: number): string => (wordCount(f.designation) > most ? "this line" : f.designation);
  const both = throughBoth(f);
  if (both !== null) {
    return [linked(both, "powerThrough"), said(` of ${into(f)} pass ${headlineLength(f.length)} of ${named(2)}.`)];
  }
  const one = told(f, f.powerThrough);
  const passes = /^1 m?W$|nothing/.test(one) ? "passes" : "pass";
  return [
    said(`Of ${into(f)}, `),
    linked(one, "powerThrough"),
    said(` ${passes} ${headlineLength(f.length)} of ${named(3)}.`),
  ];
}

export function buildVerdict(f: BuildFacts): Phrase[] {
  if (f.attenuation === 0) return losslessVerdict(f);
  const share = f.conductorShare > 0.995 ? "all of it" : `${plainNumber(100 * f.conductorShare, 0)} % of it`;
  const by = f.splitByBuild && byBuild(f).length === 0 ? "by its build " : "";
  return [
    said(
      `At ${hertz(f.frequency)}, matched, ${wordCount(f.designation) > 3 ? f.designation.replace(/^pair of/, "the pair of") : "it"} takes `,
    ),
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

/** Of perfect conductors with nothing between them that takes anything. */
const losslessVerdict = (f: BuildFacts): Phrase[] => [
  said("Perfect conductors with nothing lossy between them take "),
  linked("nothing", "attenuation"),
  said(". The impedance is "),
  linked(ohms(f.z0), "characteristicImpedance"),
  said("; waves run at "),
  linked(fixedNumber(f.velocityFactor.value, 3), "velocityFactor"),
  said(` of the speed of light. ${buildNext(f)}`),
];

function overNew({ excess }: BuildFacts): Phrase[] {
  if (excess <= 0) return [];
  return [said(", and "), linked(`${significantNumber(excess, 2)} dB`, "attenuationOverNew"), said(" more now")];
}

function byBuild({ build }: BuildFacts): Phrase[] {
  if (build === null || !routesPart(build)) return [];
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
