/** The mistaken idea that `height` corrects: the one that this station's own numbers refute. English. */
import { decibels, fixedNumber, metres, plainNumber, swrText, watts } from "../quantity/format";
import { type HeightFacts, isHigh, isTempting, signalOfMoreHeight, signalStraightUp, stepUp, where } from "./height";

export interface Idea {
  readonly idea: string;
  readonly refutation: string;
}

/** dB straight up from which "low is better for near stations" is refuted. */
const clearly = 0.3;
/** Straight up this few dB below the strongest direction: a level wire, for which height in waves is talked about. */
const sendsUp = 6;
/** SWR that people call a good match. */
const goodMatch = 2;

export function heightMistakenIdea(f: HeightFacts): Idea {
  const fewer = f.present.radiatedPower - f.lowestSwr.radiatedPower;
  if (f.verdict === "trouble" && stepUp(f) > 0 && (signalStraightUp(f) ?? 0) > clearly) return lowIdea(f);
  if (f.verdict === "trouble" && f.present.swrAtTransmitter < goodMatch) return matchIdea(f);
  if (isTempting(f) && fewer > 0.02 * f.delivered) return temptingIdea(f);
  const level = f.present.maximumGain - f.present.gainHigh < sendsUp && f.present.height < 0.5 * f.wave;
  if (level && f.verdict !== "trouble") return halfWaveIdea(f);
  return everyMetreIdea(f);
}

function lowIdea(f: HeightFacts): Idea {
  return {
    idea: "“For near stations, the lower the better.”",
    refutation: `At ${metres(f.present.height)} the soil takes ${watts(f.present.heatInSoil)} of ${watts(f.delivered)}; ${plainNumber(stepUp(f), 1)} m more bring ${decibels(signalStraightUp(f) ?? 0)} straight up, where near stations are reached.`,
  };
}

function matchIdea(f: HeightFacts): Idea {
  return {
    idea: "“A good match makes up for height.”",
    refutation: `SWR ${swrText(f.present.swrAtTransmitter)} at the transmitter, and still ${watts(f.present.heatInSoil)} of ${watts(f.delivered)} warm the soil at ${metres(f.present.height)}; at ${metres(f.most.height)} it would be ${watts(f.most.heatInSoil)}.`,
  };
}

function temptingIdea(f: HeightFacts): Idea {
  const [low, now] = [f.lowestSwr, f.present];
  return {
    idea: "“The best height is the one with the lowest SWR.”",
    refutation: `At ${metres(low.height)} the SWR is lowest, ${swrText(low.swrAtTransmitter)}, and ${watts(low.radiatedPower)} leave for the sky; at ${metres(now.height)} it is ${swrText(now.swrAtTransmitter)}, and ${watts(now.radiatedPower)} leave.`,
  };
}

function halfWaveIdea(f: HeightFacts): Idea {
  const share = plainNumber(100 * f.share, 0);
  return {
    idea: "“Below half a wave up it does not work.”",
    refutation: `${metres(f.present.height)} are ${fixedNumber(f.present.height / f.wave, 2)} of a wave, and ${share} % of what the antenna takes leave for the sky, strongest ${plainNumber(f.present.elevationOfMaximum, 0)}° up.`,
  };
}

/** A tenth of an S-unit a metre: more than that is no small change. */
const audible = 0.6;

function everyMetreIdea(f: HeightFacts): Idea {
  const step = stepUp(f);
  const more = step > 0 ? signalOfMoreHeight(f) : 0;
  if (step > 0 && Math.abs(more) / step < audible) {
    return {
      idea: "“Every metre more is heard.”",
      refutation: `${plainNumber(step, 1)} m more change the signal ${where(f)} by ${Math.abs(more) < 0.05 ? "less than 0.1 dB" : decibels(more)} here; one S-unit is 6 dB.`,
    };
  }
  return {
    idea: "“Height is all about the soil.”",
    refutation: `At ${metres(f.present.height)} the soil takes ${watts(f.present.heatInSoil)} and at ${metres(f.higher.height)} ${watts(f.higher.heatInSoil)}; what changes is the angle: strongest ${plainNumber(f.present.elevationOfMaximum, 0)}° up now, ${plainNumber(f.higher.elevationOfMaximum, 0)}° there${isHigh(f) ? ", with many lobes above" : ""}.`,
  };
}
