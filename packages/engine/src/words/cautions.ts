/** The cautions of every answer with power in it: short, each naming the thing and the act. English. */
import { plainNumber } from "../quantity/format";

export interface CautionFacts {
  /** Highest rms voltage at a feed point, V. */
  readonly feedVoltage: number;
  readonly watts: number;
  readonly people: number;
  readonly overSoil: boolean;
}

export function powerCautions(facts: CautionFacts): string[] {
  return [
    `${plainNumber(Math.SQRT2 * facts.feedVoltage, 0)} V peak at the feed point; the ends of the wires may carry far more: burns and arcing. Keep all of it out of reach and away from anything that can burn.`,
    "Masts and wires: keep more than their own length away from power lines, also for the case that they fall.",
    facts.people > 0
      ? "How near people may be is not worked out yet: the people in the file are not judged by this answer."
      : "How near people may be is not worked out yet: keep people away from the wires while sending.",
    "Lightning and grounding: local code and licensed practice decide.",
  ];
}
