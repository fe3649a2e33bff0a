/** How the current on the outside was worked out, and the rules of thumb beside it. */
import type { RuleOfThumb, WorkingStep } from "../../answer/answer";
import { fixedNumber, metres, ohms, significantNumber, watts } from "../../quantity/format";
import { amperes, changeText, type OutsideFacts, ohmText, percent, placeText } from "../../words/outside";
import { resistances } from "./chokeStudy";
import type { Found } from "./facts";

export function outsideWorking(found: Found, facts: OutsideFacts, watted: { readonly sheath: number }): WorkingStep[] {
  return [
    currentStep(found, facts),
    ...heatSteps(facts, watted.sheath),
    ...caseSteps(facts),
    ...chokeSteps(found, facts),
    ...lengthSteps(facts),
    ...endSteps(found, facts),
    noiseStep(found, facts),
  ];
}

function currentStep({ state }: Found, f: OutsideFacts): WorkingStep {
  return {
    text: `The outer surface of the line, ${metres(f.length)} with its jacket, is a wire of the antenna: at the feed point it hangs on the side of the outer conductor. Chokes and earths are ports of the same equations, closed with their own impedances. Shares are of the largest current in the antenna${feedToo(f)}.`,
    formula: "s = \\frac{|I_{\\mathrm{outside}}|}{|I_{\\mathrm{antenna}}|}",
    substituted: `s = \\frac{${significantNumber(state.largest.current, 3)}\\,\\mathrm{A}}{${significantNumber(f.antennaCurrent, 3)}\\,\\mathrm{A}} = ${significantNumber(100 * (state.largest.current / f.antennaCurrent), 3)}\\,\\%`,
    result: { value: (100 * state.largest.current) / f.antennaCurrent, unit: "%" },
    source: "moment method and Sommerfeld integrals; definition",
    explains: [
      "outsideShare",
      "outsideCurrent",
      "outsideCurrentAt",
      "outsideCurrentAtHouse",
      "feedCurrent",
      "antennaCurrent",
      "outsideShareOfFeedCurrent",
      "lengthOfOutside",
    ],
  };
}

/** Told where the feed takes much less than the antenna carries. */
const feedToo = (f: OutsideFacts): string =>
  f.antennaCurrent > 1.3 * f.feedCurrent ? `; into the feed flow ${amperes(f.feedCurrent)}` : "";

function heatSteps(f: OutsideFacts, sheath: number): WorkingStep[] {
  const chokes = f.chokes.filter((c) => c.heat > 0);
  const each = chokes.map(
    (c) =>
      `${c.name} (${c.impedance}, ${placeText(f, c.distance)}) ${watts(c.heat)} at peak, ${watts(c.mean)} in the mean on the air${c.limit === null ? ", its limit is not given" : ` of ${watts(c.limit)} allowed`}`,
  );
  const [first] = chokes;
  return [
    {
      text: `Heat on the way: ${watts(sheath)} on the outer surface${each.length > 0 ? `; ${each.join("; ")}` : ""}.`,
      ...(first
        ? {
            formula: "P = R\\,I^{2}",
            substituted: `P = ${significantNumber(first.heat / first.current ** 2, 3)}\\,\\mathrm{ohm} \\times (${significantNumber(first.current, 3)}\\,\\mathrm{A})^{2} = ${significantNumber(first.heat, 3)}\\,\\mathrm{W}`,
          }
        : {}),
      source: "current at the choke; mean by duty and time on the air of the file",
      explains: ["heatOnOutside", "chokeHeatOnAir", "heatInChokes", "heatInEarths"],
    },
  ];
}

function caseSteps(f: OutsideFacts): WorkingStep[] {
  const cases = [
    ...(f.perfect ? [{ says: "With a perfect choke at the feed point", one: f.perfect }] : []),
    ...(f.none ? [{ says: "With no choke at all", one: f.none }] : []),
  ];
  return cases.map(({ says, one }) => ({
    text: `${says}: ${percent(one.share)} of the antenna's current outside, ${changeText(f, one)}, ${fixedNumber(one.gain, 1)} dBi in place of ${fixedNumber(f.asIs.gain, 1)} dBi at the angle looked at.`,
    source: "the same wires with other impedances at their ports; far field integrated over the sky",
    explains: says.startsWith("With a perfect")
      ? ["radiatedPowerWithPerfectChoke", "swrAtTransmitterWithPerfectChoke", "outsideShareWithPerfectChoke"]
      : ["radiatedPowerWithoutChokes", "swrAtTransmitterWithoutChokes", "outsideShareWithoutChokes"],
  }));
}

function chokeSteps(found: Found, f: OutsideFacts): WorkingStep[] {
  if (!f.study || !found.study) return [];
  const { worst, bare, ohmsNeeded, distance } = f.study;
  const places = f.places.map(
    (p) =>
      `${placeText(f, p.distance)} ${p.share === null ? "nothing" : percent(p.share)}${p.ohmsNeeded === null ? "" : ` (${ohmText(p.ohmsNeeded)} for 5 %)`}`,
  );
  return [
    {
      text: `A choke ${placeText(f, distance)} was tried with ${resistances.length * found.study.reactances.length} impedances: none leaves ${percent(bare)}; a pure reactance is worst at ${ohmText(Math.abs(worst.reactance))}, ${worst.reactance < 0 ? "capacitive" : "inductive"}, with ${percent(worst.share)}${ohmsNeeded === null ? "; no resistance up to 100 kΩ brings it below 5 %" : `; ${ohmText(ohmsNeeded)} of resistance bring it below 5 %`}.`,
      source: "the same wires with other impedances at their ports",
      explains: ["resistanceNeeded", "worstReactance", "shareAtWorstReactance"],
    },
    {
      text: `One choke of ${ohms(found.tried, 0)} alone on the line leaves: ${places.join(", ")}.`,
      source: "the same wires with other impedances at their ports",
      explains: ["bestChokePlace", "resistanceNeededAtBestPlace"],
    },
  ];
}

function lengthSteps(f: OutsideFacts): WorkingStep[] {
  if (!f.worstLength) return [];
  const { extra, share } = f.worstLength;
  return [
    {
      text: `The outside was made longer and shorter at the transmitter over half a wave, its inside left as it is: the most, ${percent(share)}, comes with ${metres(Math.abs(extra))} ${extra < 0 ? "less" : "more"} (${metres(f.length + extra)} in all, ${fixedNumber((f.length + extra) / f.wave, 2)} of a wave).`,
      source: "moment method and Sommerfeld integrals, each length solved anew",
      explains: ["worstExtraLength", "shareAtWorstLength"],
    },
  ];
}

function endSteps({ end }: Found, f: OutsideFacts): WorkingStep[] {
  if (end.volts === null) return [];
  const text =
    f.earthed === null
      ? "A bare wire straight down from the transmitter's case, joined to nothing at a stake in the soil: the voltage across the open joint."
      : `The voltage across ${f.earthed} is the current that flows into it, ${amperes(end.current)}, times its impedance; the lead to it is in the model, its own voltage is not in this number.`;
  return [
    {
      text,
      result: { value: end.volts, unit: "V" },
      source: "the same equations",
      explains: ["voltageAtTransmitter", "currentIntoTransmitterEarth"],
    },
  ];
}

function noiseStep(found: Found, f: OutsideFacts): WorkingStep {
  const share = found.state.house.current / found.state.feedCurrent;
  const gained =
    f.noise.perfectShare === null ? "" : `, with a perfect choke at the feed point ${percent(f.noise.perfectShare)}`;
  return {
    text: `Receiving is the reverse: a noise voltage in series with the outside near the house (${metres(found.state.house.at)} from the transmitter) puts this share of itself on the open feed point: ${percent(share)}${gained}. How large that noise is, nobody can compute.`,
    formula: "\\frac{V_{\\mathrm{feed}}}{V_{\\mathrm{noise}}} = \\frac{I_{\\mathrm{house}}}{I_{\\mathrm{feed}}}",
    substituted: `\\frac{${significantNumber(found.state.house.current, 3)}\\,\\mathrm{A}}{${significantNumber(f.feedCurrent, 3)}\\,\\mathrm{A}} = ${significantNumber(100 * share, 3)}\\,\\%`,
    source: "reciprocity of the antenna's ports",
    explains: ["noiseShare", "noiseAsField"],
  };
}

/** Worst lengths by the rule of the end: odd quarter waves where it floats, half waves where it is earthed. */
function worstByRule(f: OutsideFacts): number {
  const quarter = f.wave / 4;
  const present = f.length / quarter;
  const nearest = f.earthed === null ? 2 * Math.round((present - 1) / 2) + 1 : 2 * Math.max(1, Math.round(present / 2));
  return Math.max(1, nearest) * quarter;
}

export function outsideRules(f: OutsideFacts): RuleOfThumb[] {
  if (f.againstLine) return [];
  const choke: RuleOfThumb[] =
    f.study === null
      ? []
      : [
          {
            rule: "a choke wants ten times the line's impedance",
            ruleValue: "500 Ω",
            computed:
              f.study.ohmsNeeded === null
                ? "no resistance is enough there"
                : `${ohmText(f.study.ohmsNeeded)} ${placeText(f, f.study.distance)} for less than 5 %`,
            holds: "never by itself: what counts is the impedance of the outside at that place",
            source: "common practice, no source",
          },
        ];
  if (!f.worstLength) return choke;
  return [
    ...choke,
    {
      rule:
        f.earthed === null
          ? "a floating outside carries most at odd quarter waves"
          : "an earthed outside carries most at whole half waves",
      ruleValue: metres(worstByRule(f)),
      computed: metres(f.length + f.worstLength.extra),
      holds: "roughly: jacket, soil, bends and the lead to the earth shift it",
      source: "common practice, no source",
    },
  ];
}
