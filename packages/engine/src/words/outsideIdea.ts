/** The mistaken idea that `outside` corrects: the one this station's own numbers refute. English. */
import { swrText } from "../quantity/format";
import { amperes, goodShare, type OutsideFacts, ohmText, percent, placeText } from "./outside";

export interface Idea {
  readonly idea: string;
  readonly refutation: string;
}

/** Bands differ by more than this: "one band only". */
const oneBandOnly = 2.5;
/** A choke makes it worse when the current rises by more than this. */
const clearlyWorse = 1.5;

export function outsideMistakenIdea(f: OutsideFacts): Idea {
  if (f.againstLine) return returnIdea(f);
  return bandIdea(f) ?? reactiveIdea(f) ?? swrIdea(f) ?? needIdea(f);
}

function returnIdea(f: OutsideFacts): Idea {
  return {
    idea: "“My end-fed wire needs no counterpoise.”",
    refutation: `It has one: ${amperes(f.feedCurrent)} flow into the wire and just as many back on the outside of the line, and ${amperes(f.house.current)} of them reach the house.`,
  };
}

function bandIdea(f: OutsideFacts): Idea | null {
  const sorted = [...f.bands].sort((a, b) => b.share - a.share);
  const [most, least] = [sorted[0], sorted.at(-1)];
  if (!most || !least || most.share < goodShare || most.share < oneBandOnly * least.share) return null;
  return {
    idea: "“It happens on one band only, so the earth in the shack is bad.”",
    refutation: `Line and earth are the same on every band: on ${most.name} the outside carries ${percent(most.share)} of the current in the antenna, on ${least.name} ${percent(least.share)}. The length of the outside in waves decides.`,
  };
}

function reactiveIdea(f: OutsideFacts): Idea | null {
  const { study } = f;
  if (!study || study.worst.share < goodShare || study.worst.share < clearlyWorse * study.bare) return null;
  const kind = study.worst.reactance < 0 ? "capacitive" : "inductive";
  return {
    idea: "“Any choke is better than none; more turns, more ohms.”",
    refutation: `A choke of ${ohmText(Math.abs(study.worst.reactance))}, all of it ${kind}, ${placeText(f, study.distance)} would bring this line into resonance: ${percent(study.worst.share)} of the current in the antenna, against ${percent(study.bare)} with none there. Resistance has no such place.`,
  };
}

function swrIdea(f: OutsideFacts): Idea | null {
  if (f.none === null || f.none.share < goodShare) return null;
  return {
    idea: "“A balun is about impedance; my SWR is fine, so I need none.”",
    refutation: `Without any choke the SWR here is ${swrText(f.none.swr)}, and the outside carries ${percent(f.none.share)} of the current in the antenna. The meter does not see it.`,
  };
}

function needIdea(f: OutsideFacts): Idea {
  const bare = f.none?.share ?? f.share;
  return {
    idea: "“Without a choke every line radiates.”",
    refutation: `This one carries ${percent(bare)} of the current in the antenna without any: its length and its way decide. A choke keeps it so when either changes.`,
  };
}
