/** The facts the sentences of `limits` are made of. */
import type { Verdict } from "../../answer/answer";
import { constantsOf } from "../../chain/edges";
import type { WorkedPart } from "../../chain/workedPoint";
import { swr } from "../../lines/reflection";
import { decidingLimit, lineVoltageLimits } from "../../stress/lineVoltage";
import { greatestAlong, squaresAt } from "../../stress/standingWave";
import { theName } from "../../words/phrases";
import type { FirstFacts, HotFacts, StressFacts } from "../../words/stress";
import { otherBandSays } from "../../words/stressAdvice";
import type { StressIdeaFacts } from "../../words/stressIdea";
import { nameInSentence } from "../common/inUse";
import type { AddedLength } from "./addedLength";
import type { OnBand } from "./bands";
import { shareOfTime } from "./conditions";
import { lineTimeConstant } from "./course";
import { type LimitFact, marginOf } from "./limitFact";
import { hottest, waveOf } from "./lineHeat";
import { peakOfPart } from "./partPeak";
import type { LineStudy, Study } from "./study";

/** dB of power in hand from which the verdict is good: half the power that would fail. Our rule. */
const goodFrom = 3;

export const partName = (study: Study, name: string): string =>
  name === "" ? "" : theName(nameInSentence(study.worked.point, name));

export function firstFacts(study: Study, fact: LimitFact): FirstFacts {
  const part = study.worked.point.parts.find((one) => one.edge.name === fact.part);
  return { ...fact, name: partName(study, fact.part), length: part?.length ?? 0 };
}

export function stressFacts(study: Study, added: AddedLength | null): StressFacts {
  const { worked, facts, asked } = study;
  const power = worked.point.powerFromTransmitter;
  const [first] = facts;
  const margin = marginOf(first.times);
  const low = worked.bounds.low.leastMargin ?? margin;
  const high = worked.bounds.high.leastMargin ?? margin;
  const watts = (dB: number): number => power * 10 ** (dB / 10);
  const part = worked.point.parts.find((one) => one.edge.name === first.part);
  return {
    power,
    duty: asked.duty.value,
    first: firstFacts(study, first),
    failing: watts(margin),
    failingLow: watts(low),
    failingHigh: watts(high),
    verdict: verdictOf(margin, low),
    endless: asked.sending.kind === "endless",
    hot: hotFacts(study),
    swrOnLine: part ? swrOnLine(study, part) : null,
    peak: part ? peakOfPart(worked.point, part) : 0,
    added: added && part?.edge.kind === "tuner" ? added.best : null,
  };
}

const verdictOf = (margin: number, low: number): Verdict =>
  margin < 0 ? "trouble" : margin >= goodFrom && low >= 0 ? "good" : "workable";

/** SWR on a line's own impedance at its far end; null for other parts. */
export function swrOnLine({ worked: { point } }: Study, part: WorkedPart): number | null {
  const end = point.joints.find((joint) => joint.name === part.to);
  if (part.edge.part?.kind !== "line" || !end) return null;
  return swr(end.impedance, constantsOf(part.edge.part, point.frequency).z0.re);
}

/** Other bands on which something fails with the power that goes there. */
export const otherBands = (study: Study, everywhere: readonly OnBand[]): string[] =>
  everywhere
    .filter(({ band, first }) => band !== study.worked.band && first.times < 1)
    .map(({ band, power, first }) => otherBandSays(band.name, power * first.times, firstFacts(study, first)));

/** The line whose insulation comes first. */
export const hottestLine = ({ lines }: Study): LineStudy | null =>
  lines.filter((line) => line.heat !== null).sort((a, b) => a.heat!.times - b.heat!.times)[0] ?? null;

export function hotFacts(study: Study): HotFacts | null {
  const line = hottestLine(study);
  const part = line?.part.edge.part;
  if (!line?.heat || part?.kind !== "line") return null;
  const { heat } = line;
  const { point } = study.worked;
  return {
    name: partName(study, line.part.edge.name),
    designation: part.line.designation,
    conductor: heat.temperatures.inner - 273.15,
    jacket: heat.temperatures.surface - 273.15,
    limit: heat.thermal.greatestTemperature - 273.15,
    at: heat.at,
    length: line.part.length,
    matched: matchedTemperature(study, line),
    watts: heat.watts,
    failing: point.powerFromTransmitter * heat.times,
    timeConstant: lineTimeConstant(heat),
  };
}

/** °C at the start of the line with the same power into it and no wave coming back. */
function matchedTemperature({ worked: { point }, conditions }: Study, { part, heat }: LineStudy): number {
  if (!heat || part.edge.part?.kind !== "line") return Number.NaN;
  const { z0 } = constantsOf(part.edge.part, point.frequency);
  const square = conditions.duty * part.powerIn;
  const drive = { current: square / z0.re, voltage: square * z0.re };
  return hottest(heat.thermal, drive, heat.leaving, heat.ambient, conditions.sending).inner - 273.15;
}

export function ideaFacts(study: Study): StressIdeaFacts {
  const { worked, lines, facts, asked } = study;
  const { point } = worked;
  const power = point.powerFromTransmitter;
  const both = lines.flatMap((line) => bothLimits(study, line))[0] ?? null;
  const standing = lines
    .flatMap(({ part }) => {
      const wave = waveOf(point, part);
      const ratio = swrOnLine(study, part);
      if (!wave || ratio === null) return [];
      const highest = Math.sqrt(2 * greatestAlong(wave, (s) => s.voltage).value);
      const places = Array.from({ length: 201 }, (_, i) => squaresAt(wave, (wave.length * i) / 200).voltage);
      return [
        { name: partName(study, part.edge.name), swr: ratio, highest, lowest: Math.sqrt(2 * Math.min(...places)) },
      ];
    })
    .sort((a, b) => b.highest / b.lowest - a.highest / a.lowest)[0];
  const warm = facts.find((fact) => fact.of === "heat" && Number.isFinite(fact.times));
  const share = asked.duty.value * shareOfTime(asked.sending);
  return {
    both,
    standing: standing ?? null,
    warm: warm
      ? { name: partName(study, warm.part), asSent: power * warm.times, steady: power * warm.times * share }
      : null,
    field: facts.find((fact) => fact.part === "")?.value ?? 0,
  };
}

function bothLimits({ worked: { point }, conditions }: Study, { part, heat }: LineStudy) {
  if (!heat || part.edge.part?.kind !== "line" || !Number.isFinite(heat.times)) return [];
  const limit = decidingLimit(lineVoltageLimits(part.edge.part.line, conditions.air));
  if (!limit) return [];
  return [
    {
      designation: part.edge.part.line.designation,
      peak: limit.peak,
      impedance: constantsOf(part.edge.part, point.frequency).z0.re,
      watts: point.powerFromTransmitter * heat.times,
      degrees: heat.thermal.greatestTemperature - 273.15,
    },
  ];
}
