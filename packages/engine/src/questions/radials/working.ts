/** How the radials were worked out, and the rules of thumb beside it. */
import type { RuleOfThumb, WorkingStep } from "../../answer/answer";
import { decibels, fixedNumber, metres, plainNumber, significantNumber, swrText, watts } from "../../quantity/format";
import { gained, lieText, type RadialFacts, radialsText, shortText, type TriedFacts } from "../../words/radials";
import { type RadialCurrent, spreadOf } from "./currents";
import type { Study } from "./study";
import { currentsShown } from "./tables";

const method = "moment method and Sommerfeld integrals, each layout solved anew; far field integrated over the sky";

export function radialWorking(f: RadialFacts, study: Study): WorkingStep[] {
  return [
    splitStep(f),
    countStep(f, study),
    ...lengthSteps(f),
    ...sameWireSteps(f),
    ...otherSteps(f),
    ...currentSteps(currentsShown(study), f),
  ];
}

function splitStep(f: RadialFacts): WorkingStep {
  const { resistance, share } = f.now;
  return {
    text: `The feed point takes ${watts(f.into)} at ${fixedNumber(resistance, 1)} Ω. Of each ohm, ${fixedNumber(100 * share, 1)} % send; soil, wires and what else warms take the rest. A return that takes more adds ohms without adding signal: an antenna below the rated load then reads a lower SWR while less leaves.`,
    formula: "R = R_{\\mathrm{sky}} + R_{\\mathrm{heat}}, \\; R_{\\mathrm{sky}} = R \\frac{P_{\\mathrm{sky}}}{P}",
    substituted: `R_{\\mathrm{sky}} = ${fixedNumber(resistance, 1)}\\,\\mathrm{ohm} \\times \\frac{${significantNumber(f.now.watts, 3)}\\,\\mathrm{W}}{${significantNumber(f.into, 3)}\\,\\mathrm{W}} = ${significantNumber(resistance * share, 3)}\\,\\mathrm{ohm}`,
    result: { value: resistance * share, unit: "ohm" },
    source: "power at the feed point; far field integrated over the sky",
    explains: [
      "skyShare",
      "sendingResistance",
      "lossResistance",
      "radialCount",
      "radialLength",
      "wireInRadials",
      "gainAtElevation",
      "gainAt10",
      "gainAt25",
    ],
  };
}

const each = (list: readonly TriedFacts[], name: (t: TriedFacts) => string): string =>
  list.map((t) => `${name(t)} ${watts(t.watts)} (SWR ${swrText(t.swrAtFeedPoint)})`).join(", ");

function countStep(f: RadialFacts, { tooMany, ranged }: Study): WorkingStep {
  const length = f.byCount.at(-1)?.length ?? f.now.length;
  const bounded = tooMany === null ? "" : ` ${tooMany} and more were not tried: they take too long.`;
  const range = ranged === null ? "" : ` The bands of the picture show ${ranged} at the ends of its range.`;
  return {
    text: `Of ${watts(f.into)} into the antenna leave, by number of radials of ${metres(length)} ${lieText(f.byCount.at(-1)?.lie ?? f.now.lie)}: ${each(f.byCount, (t) => (t.count === 0 ? "none" : String(t.count)))}; SWR at the feed point. With ${f.enough.count} at most 0.3 dB are missing of what ${f.most.count} send.${bounded}${range}`,
    formula: "\\Delta = 10 \\log_{10} \\frac{P_{2}}{P_{1}}",
    substituted: `\\Delta = 10 \\log_{10} \\frac{${significantNumber(f.most.watts, 3)}}{${significantNumber(f.now.watts, 3)}} = ${fixedNumber(f.behindMost, 2)}\\,\\mathrm{dB}`,
    result: { value: f.behindMost, unit: "dB" },
    source: method,
    explains: [
      "enoughRadials",
      "mostRadials",
      "behindMost",
      "radiatedWithMore",
      "wattsMoreFromMore",
      "radiatedWithMost",
    ],
  };
}

function lengthSteps(f: RadialFacts): WorkingStep[] {
  if (f.byLength.length < 2) return [];
  const [first] = f.byLength;
  return [
    {
      text: `By length of ${first!.count}: ${each(f.byLength, (t) => metres(t.length))}.`,
      source: method,
      explains: ["wattsMoreFromLonger"],
    },
  ];
}

function sameWireSteps(f: RadialFacts): WorkingStep[] {
  if (f.sameWirePoints.length === 0) return [];
  const [first] = f.sameWirePoints;
  return [
    {
      text: `${metres(first!.count * first!.length)} of wire in all, ${lieText(first!.lie)}: ${each(f.sameWirePoints, shortText)}.`,
      source: method,
      explains: [
        "bestCountOfSameWire",
        "bestLengthOfSameWire",
        "behindSameWire",
        "radiatedWithSameWire",
        "wattsMoreFromSameWire",
      ],
    },
  ];
}

function otherSteps(f: RadialFacts): WorkingStep[] {
  if (!f.otherwise) return [];
  const round = f.allRound ? ` The present radials spread all round: ${watts(f.allRound.watts)}.` : "";
  return [
    {
      text: `The same wire ${lieText(f.otherLie)}, the whole antenna moved with it, at its best as ${shortText(f.otherwise)}: ${watts(f.otherwise.watts)}, ${decibels(gained(f.now, f.otherwise))} against now; ${fixedNumber(f.otherwise.gain, 1)} dBi in place of ${fixedNumber(f.now.gain, 1)} dBi ${plainNumber(f.elevation, 0)}° up; SWR at the feed point ${swrText(f.otherwise.swrAtFeedPoint)} in place of ${swrText(f.now.swrAtFeedPoint)}.${round}`,
      source: method,
      explains: ["radiatedWithSameWireOtherwise", "wattsMoreFromMoving", "radiatedAllRound"],
    },
  ];
}

/** Radials told one by one. */
const mostTold = 8;

function currentSteps(currents: readonly RadialCurrent[], f: RadialFacts): WorkingStep[] {
  if (currents.length === 0) return [];
  const spread = spreadOf(currents)!;
  const told = currents
    .slice(0, mostTold)
    .map((c) => `${significantNumber(c.current, 2)} A towards ${plainNumber(c.azimuth, 0)}°`);
  const rest = currents.length > mostTold ? ", and so on" : "";
  const whose = f.now.count > 0 ? "Current in each radial" : `Current in each of ${currents.length} radials`;
  const alike = spread < 1.01 && currents.length > 1;
  return [
    {
      text: alike
        ? `${whose}, where they meet: ${significantNumber(currents[0]!.current, 2)} A, alike in all ${currents.length}.`
        : `${whose}, where they meet: ${told.join(", ")}${rest}. The largest is ${fixedNumber(spread, 2)} times the smallest.`,
      source: "currents of the same solution, at peak envelope power",
      explains: ["largestRadialCurrent", "radialCurrentSpread"],
    },
  ];
}

export function radialRules(f: RadialFacts): RuleOfThumb[] {
  const most = f.byCount.at(-1)!;
  const half = [...f.byCount].reverse().find((t) => t.count > 0 && t.count <= most.count / 2);
  const quarter = f.wave / 4;
  const rules: RuleOfThumb[] = [];
  if (half)
    rules.push({
      rule: "120 radials, or it does not work",
      ruleValue: "120 radials",
      computed: `from ${half.count} to ${most.count}: ${decibels(gained(half, most))}`,
      holds: `for broadcasting, where a tenth of a decibel is money; more than ${most.count} were not computed here`,
      source: "common practice, no source",
    });
  const [shortBest] = [...f.byLength].filter((t) => t.length <= 0.65 * quarter).sort((a, b) => b.share - a.share);
  const [atQuarter] = [...f.byLength].sort((a, b) => Math.abs(a.length - quarter) - Math.abs(b.length - quarter));
  if (shortBest && atQuarter && shortBest !== atQuarter)
    rules.push({
      rule: "radials must be a quarter wave long",
      ruleValue: metres(quarter),
      computed: `${radialsText(shortBest)} send ${plainNumber((100 * shortBest.share) / atQuarter.share, 0)} % of what ${shortText(atQuarter)} send`,
      holds:
        "nearly, for a few raised ones; on the soil waves run slower along the wire, so shorter ones may do as well and longer ones worse",
      source: "common practice, no source",
    });
  return rules;
}
