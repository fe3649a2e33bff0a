/** The facts the sentences of `bounce` are made of. */

import { swr, voltageReflection } from "../../lines/reflection";
import { divide, magnitude } from "../../numerics/complex";
import type { BounceFacts } from "../../words/bounce";
import { greatest } from "./echoTable";
import { firstWavePower } from "./scaled";
import { settlingOf } from "./settling";
import type { SourceCompared } from "./sources";
import { type BounceStudy, matchedHeat } from "./study";

export function bounceFacts(study: BounceStudy, sources: readonly SourceCompared[]): BounceFacts {
  const { looked, asked, start, end, lattice, constants, frequency } = study;
  const conductance = divide({ re: 1, im: 0 }, constants.z0).re;
  const home = echoHome(study);
  return {
    signal: asked.signal,
    line: looked.part.name,
    designation: looked.part.line.designation,
    length: looked.length,
    lengthTried: asked.length !== null,
    frequency,
    loadKind: looked.loadKind,
    load: looked.load,
    delay: study.delay,
    waves: study.waves,
    impedance: constants.z0,
    surgeImpedance: study.stepped.surgeImpedance,
    source: study.source.re,
    sourceAssumed: asked.sourceAssumed,
    echoes: study.echoes,
    settling: settlingOf(study),
    powerIn: start.power,
    powerOut: end.power,
    firstWave: firstWavePower(lattice),
    forwardAtLoad: magnitude(lattice.forward) ** 2 * magnitude(lattice.oneWay) ** 2 * conductance,
    reflectedAtLoad: magnitude(lattice.reflected) ** 2 * conductance,
    swrAtLoad: looked.load === null ? Number.POSITIVE_INFINITY : swr(looked.load, constants.z0.re),
    reflectionAtLoad: magnitude(lattice.reflectionAtLoad),
    reflectionAtSource: magnitude(voltageReflection(study.source, constants.z0)),
    heat: start.power - end.power,
    matchedHeat: matchedHeat(study),
    sources: sources.map(({ name, echoes }) => ({ name, echoes })),
    home,
    shows: study.plan.shows,
    cut: study.plan.cut !== null,
    quality: looked.fit?.quality ?? null,
    fitDeviation: looked.fit?.worstDeviation ?? null,
    lossDeviation: study.stepped.worstDeviation,
  };
}

/** The first echo as it is home, signed share of the first wave; and what the start shows before and after. */
function echoHome(study: BounceStudy): BounceFacts["home"] {
  if (study.asked.signal === "carrier") return null;
  const { film, plan, stepped } = study;
  const wave = (sign: 1 | -1, n: number) =>
    (film.inputVoltage[n]! + sign * stepped.surgeImpedance * film.inputCurrent[n]!) / 2;
  const [sent, home] = [0, 2 * plan.sections].map((from, i) => {
    const to = Math.min(from + 2 * plan.sections, plan.steps) - 1;
    const signed = (n: number) => wave(i === 0 ? 1 : -1, n);
    return study.asked.signal === "step" ? signed(to) : greatest(signed, from, to);
  });
  const share = (100 * home!) / sent!;
  const before = Math.round(0.5 * plan.sections);
  const last = plan.steps - 1;
  const ratio = (n: number): number | null => {
    const current = film.inputCurrent[n]!;
    return Math.abs(current) > 1e-9 * Math.abs(film.inputVoltage[n]!) ? film.inputVoltage[n]! / current : null;
  };
  return { share, before: ratio(before), after: ratio(last), filmed: last * study.stepped.timeStep };
}
