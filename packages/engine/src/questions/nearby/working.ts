/** How what stands near by was worked out, and the rules of thumb beside it. */
import type { RuleOfThumb, WorkingStep } from "../../answer/answer";
import {
  decibels,
  fixedNumber,
  megahertz,
  metres,
  ohms,
  plainNumber,
  significantNumber,
  swrText,
  watts,
} from "../../quantity/format";
import { amperes, bearingText, placeText, share } from "../../words/nearby";
import type { NearbyFacts, RemedyFacts, ThingFacts } from "../../words/nearbyFacts";
import { capital, theName } from "../../words/phrases";

const sameEquations = "moment method and Sommerfeld integrals; the same mesh for all";

export function nearbyWorking(f: NearbyFacts): WorkingStep[] {
  return [stateStep(f), ...dipSteps(f), ...f.things.flatMap((t, i) => thingSteps(f, t, i === 0)), ...roofSteps(f)];
}

function stateStep({ asIs, withoutAll }: NearbyFacts): WorkingStep {
  const strongest = (s: typeof asIs.strongest): string =>
    `${fixedNumber(s.gain, 1)} dBi ${plainNumber(s.elevation, 0)}° up ${bearingText(s.azimuth)}`;
  return {
    text: `The station was solved as it stands and without what is near by: the feed point shows ${ohms(asIs.feedPoint)} in place of ${ohms(withoutAll.feedPoint)}, ${watts(asIs.radiated)} leave in place of ${watts(withoutAll.radiated)}, and it is strongest at ${strongest(asIs.strongest)} in place of ${strongest(withoutAll.strongest)}.`,
    source: sameEquations,
    explains: [
      ...["radiatedPowerWithout", "swrSeen", "swrWithout", "feedPointImpedanceWithout", "gainAtElevation"],
      ...["gainAtElevationWithout", "maximumGainWithout", "elevationOfMaximumWithout", "azimuthOfMaximumWithout"],
    ],
  };
}

function dipSteps({ dips: { asIs, without } }: NearbyFacts): WorkingStep[] {
  if (!asIs || !without) return [];
  const at = (hertz: number | null): string =>
    hertz === null ? "beyond the span looked at" : `at ${megahertz(hertz)}`;
  return [
    {
      text: `Over the band and half its width to either side the SWR is lowest ${at(asIs.lowestSwr)}, without what is near by ${at(without.lowestSwr)}; the feed point is resonant ${at(asIs.resonance)}, without it ${at(without.resonance)}.`,
      source: "impedance interpolated between exact solutions, checked between them",
      explains: ["lowestSwrFrequency", "lowestSwrFrequencyWithout", "resonantFrequency", "resonantFrequencyWithout"],
    },
  ];
}

function thingSteps(f: NearbyFacts, t: ThingFacts, first: boolean): WorkingStep[] {
  return [
    inducedStep(f, t, first),
    ...distanceSteps(f, t, first),
    ...resonanceSteps(f, t, first),
    ...remedySteps(t, first),
  ];
}

function inducedStep(f: NearbyFacts, t: ThingFacts, first: boolean): WorkingStep {
  const ratio = significantNumber((100 * t.induced.current) / f.antennaCurrent, 2);
  return {
    text: `${capital(theName(t.name))} (${t.says}), ${metres(t.distance)} from the nearest wire of the antenna: up to ${amperes(t.induced.current)} run in it, ${share(f, t)} of the largest current in the antenna (${amperes(f.feedCurrent)} run into the feed point); its metal warms with ${watts(t.induced.heat)}. Without it alone the SWR is ${swrText(t.without.swr)}, the feed point ${ohms(t.without.feedPoint)} and the gain ${fixedNumber(t.without.gain, 1)} dBi.`,
    formula: "s = \\frac{|I_{\\mathrm{thing}}|}{|I_{\\mathrm{antenna}}|}",
    substituted: `s = \\frac{${significantNumber(t.induced.current, 3)}\\,\\mathrm{A}}{${significantNumber(f.antennaCurrent, 3)}\\,\\mathrm{A}} = ${ratio}\\,\\%`,
    source: sameEquations,
    explains: first
      ? [
          "inducedCurrent",
          "inducedShare",
          "inducedShareOfFeedCurrent",
          "inducedAt",
          "heatInThing",
          "antennaCurrent",
          "distanceOfThing",
        ]
      : [],
  };
}

function distanceSteps(f: NearbyFacts, t: ThingFacts, first: boolean): WorkingStep[] {
  if (!t.clear) return [];
  const { distance, towards, upTo, count } = t.clear;
  const found =
    distance === null
      ? `up to ${metres(upTo)} it never stops`
      : `from ${metres(distance)} on (${fixedNumber(distance / f.wave, 2)} of a wave) it has stopped`;
  return [
    {
      text: `${capital(theName(t.name))} was moved level, ${bearingText(towards)}, up to one and a half waves, and looked at in ${count} places, straight between them. It counts as mattering while it changes SWR by 0.1 (5 % above SWR 2) or gain by 0.5 dB at the angle looked at: ${found}.`,
      source: `${sameEquations}; our rule for what matters (no source)`,
      explains: first ? ["clearDistance"] : [],
    },
  ];
}

function resonanceSteps(f: NearbyFacts, t: ThingFacts, first: boolean): WorkingStep[] {
  if (!t.resonance) return [];
  const { frequency, resistance } = t.resonance;
  const place = t.openedAt === null ? "at its own feed point" : `cut ${placeText(t, t.openedAt)}`;
  const off = frequency === null ? 0 : 100 * (frequency / f.frequency - 1);
  const text =
    frequency === null
      ? `Alone over the soil and ${place} it has no resonance between 0.45 and 2.2 times the working frequency.`
      : `Alone over the soil and ${place} its reactance is zero at ${megahertz(frequency)}, ${plainNumber(Math.abs(off), 0)} % ${off < 0 ? "below" : "above"} the working frequency; its resistance there is ${plainNumber(resistance ?? 0, 0)} Ω.`;
  return [
    {
      text: `Resonance of ${theName(t.name)}: ${text}`,
      source: "moment method, zero of the reactance",
      explains: first ? ["resonanceOfThing"] : [],
    },
  ];
}

function remedySteps(t: ThingFacts, first: boolean): WorkingStep[] {
  if (t.remedies.length === 0) return [];
  const each = t.remedies.map(
    (r) =>
      `${remedyName(t, r)}: SWR ${swrText(r.state.swr)}, gain ${fixedNumber(r.state.gain, 1)} dBi, ${watts(r.state.radiated)} to the sky`,
  );
  return [
    {
      text: `Spoiling ${theName(t.name)}. ${capital(each.join("; "))}.`,
      source: "the same wires with another bridge across the gap",
      explains: first
        ? t.remedies.flatMap(({ kind }) => {
            const suffix = { insulator: "Insulator", choke: "Choke", open: "OpenEnd", shorted: "ShortedEnd" }[kind];
            return [`swrWith${suffix}`, `gainAtElevationWith${suffix}`, `radiatedPowerWith${suffix}`];
          })
        : [],
    },
  ];
}

export function remedyName(t: ThingFacts, r: RemedyFacts): string {
  if (r.kind === "open" || r.kind === "shorted") return `its feed point ${r.kind}`;
  const what = r.kind === "insulator" ? "an insulator" : `a choke of ${plainNumber(r.ohms ?? 0, 0)} Ω`;
  return `${what} ${placeText(t, r.at ?? 0)}`;
}

function roofSteps(f: NearbyFacts): WorkingStep[] {
  return f.roofs.map((r) => ({
    text: `The roof of ${r.covering} takes ${decibels(r.low)} to ${decibels(r.high)}, given by the file, of what leaves:`,
    formula: "P = P_{\\mathrm{sky}} \\cdot 10^{-a/10}",
    substituted: `P = ${significantNumber(f.asIs.radiated, 3)}\\,\\mathrm{W} \\cdot 10^{-${plainNumber(r.high, 2)}/10} = ${significantNumber(r.wattsLow, 3)}\\,\\mathrm{W}`,
    result: { value: r.wattsLow, unit: "W" },
    source: "loss stated in the station file",
    explains: ["roofLoss", "radiatedPowerBehindRoof"],
  }));
}

export function nearbyRules(f: NearbyFacts): RuleOfThumb[] {
  const [top] = f.things;
  if (!top) return [];
  const half: RuleOfThumb = {
    rule: "keep conductors half a wave away",
    ruleValue: metres(f.wave / 2),
    computed: !top.clear
      ? "not looked at"
      : top.clear.distance === null
        ? `more than ${metres(top.clear.upTo)} for ${theName(top.name)}`
        : `${metres(top.clear.distance)} for ${theName(top.name)}`,
    holds: "for things far from resonance, or across the antenna's wire",
    source: "common practice, no source",
  };
  const hertz = top.resonance?.frequency;
  if (top.kind !== "conductor" || !hertz) return [half];
  const light = 299_792_458;
  const quarters = top.standing ? 4 : 2;
  return [
    half,
    {
      rule: top.standing
        ? "a wire that stands on the soil resonates where it is a quarter wave long"
        : "a free wire resonates where it is half a wave long",
      ruleValue: megahertz(light / (quarters * top.length), 1),
      computed: megahertz(hertz, 1),
      holds: "within some per cent for thin straight wires; thick ones, bends and the soil lower it",
      source: "common practice, no source",
    },
  ];
}
