/** The mistaken idea that `band` corrects: the one that this station's own numbers refute. English. */
import { decibels, megahertz, plainNumber, swrText } from "../quantity/format";
import { type BandFacts, flatters } from "./band";

export interface Idea {
  readonly idea: string;
  readonly refutation: string;
}

/** Share of the frequency from which lowest SWR and resonance count as two marks. */
const apart = 0.002;
/** dB in the line up to which a worse SWR is told as costing little. Our rule. */
const little = 0.5;

export function bandMistakenIdea(f: BandFacts): Idea {
  const { atAntenna, atTransmitter } = f.ends;
  if (!f.onlyLoss && Math.abs(atAntenna - atTransmitter) >= flatters) return transformedIdea(f);
  if (f.onlyLoss && atAntenna - atTransmitter >= 2 * flatters) return flatteredIdea(f);
  if (
    f.resonantFrequency !== null &&
    Math.abs(f.resonantFrequency - f.lowestSwrFrequency) > apart * f.resonantFrequency
  )
    return resonanceIdea(f, f.resonantFrequency);
  if (f.onlyLoss && atAntenna - atTransmitter >= flatters) return flatteredIdea(f);
  if (f.lineLossAtWorst - f.lineLossAtBest < little) return tenthsIdea(f);
  return costlyIdea(f);
}

function transformedIdea(f: BandFacts): Idea {
  const { atAntenna, atTransmitter, frequency } = f.ends;
  const shows = f.tuner ? "the shack without the tuner would show" : "the shack shows";
  return {
    idea: "“The SWR on the meter is the antenna's SWR.”",
    refutation: `At ${megahertz(frequency, 2)} ${shows} ${swrText(atTransmitter)} and the feed point is at ${swrText(atAntenna)}, both on ${plainNumber(f.rated, 1)} Ω: what lies between changes the impedance. Only watts can be followed from one end to the other.`,
  };
}

function flatteredIdea(f: BandFacts): Idea {
  const { atAntenna, atTransmitter, frequency } = f.ends;
  const cause =
    f.onlyLines && f.matchedLoss !== null
      ? `the line's own ${decibels(f.matchedLoss)} make it look better`
      : "what line and parts take between makes it look better";
  return {
    idea: "“A low reading in the shack means a good antenna.”",
    refutation: `At ${megahertz(frequency, 2)} the antenna is at SWR ${swrText(atAntenna)} while the shack shows ${swrText(atTransmitter)}: ${cause}. A worse line would make it look better still.`,
  };
}

function resonanceIdea(f: BandFacts, resonance: number): Idea {
  return {
    idea: "“Lowest SWR is where the antenna is resonant.”",
    refutation: `Here SWR is lowest at ${megahertz(f.lowestSwrFrequency)} and the antenna resonant at ${megahertz(resonance)}. The transmitter cares for SWR; resonance is no virtue in itself.`,
  };
}

function tenthsIdea(f: BandFacts): Idea {
  const line =
    f.lineLossAtWorst > 0
      ? `the line takes ${decibels(f.lineLossAtBest)} at the one and ${decibels(f.lineLossAtWorst)} at the other. Nobody hears the difference`
      : "no line lies between that could take anything for it";
  return {
    idea: "“Every tenth of SWR costs power.”",
    refutation: `SWR runs from ${swrText(f.best)} to ${swrText(f.worst)} in this band, and ${line}.`,
  };
}

function costlyIdea(f: BandFacts): Idea {
  return {
    idea: "“A match in the shack mends a bad match at the antenna.”",
    refutation: `Where the shack shows ${swrText(f.worst)} the line takes ${decibels(f.lineLossAtWorst)}, where it shows ${swrText(f.best)}, ${decibels(f.lineLossAtBest)}: a tuner in the shack changes neither.`,
  };
}
