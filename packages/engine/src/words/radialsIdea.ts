/** The mistaken idea that `radials` corrects: the one that this station's own numbers refute. English. */
import { metres, plainNumber, swrText, watts } from "../quantity/format";
import { gained, ohmsSplit, type RadialFacts, radialsText, shortText, type TriedFacts } from "./radials";

export interface Idea {
  readonly idea: string;
  readonly refutation: string;
}

/** A lower SWR counts from this step on, and fewer watts from this many dB. */
const lowerSwr = 0.1;
const fewerWatts = 0.3;

export function radialMistakenIdea(f: RadialFacts): Idea {
  return swrIdea(f) ?? quarterIdea(f) ?? numberIdea(f);
}

/** Fewer radials, lower SWR, fewer watts. */
function swrIdea(f: RadialFacts): Idea | null {
  const best = f.most;
  const worse = [...f.byCount]
    .filter((t) => gained(t, best) > fewerWatts && t.swrAtFeedPoint < best.swrAtFeedPoint - lowerSwr)
    .sort((a, b) => a.swrAtFeedPoint - b.swrAtFeedPoint)[0];
  if (!worse) return null;
  const name = (t: TriedFacts): string => (t.count === 0 ? `${f.earthAlone ?? "no radials"} alone` : radialsText(t));
  return {
    idea: "“The SWR came down, so it works better.”",
    refutation: `With ${name(worse)} the SWR at the feed point is ${swrText(worse.swrAtFeedPoint)} and ${watts(worse.watts)} leave; with ${name(best)} it is ${swrText(best.swrAtFeedPoint)} and ${watts(best.watts)} leave. What the soil takes adds ohms: ${ohmsSplit(worse)}, against ${ohmsSplit(best)}.`,
  };
}

/** A radial this near to a quarter wave is one, relative. */
const aboutQuarter = 0.08;

/** The same wire in pieces shorter than a quarter wave sends as much or more. */
function quarterIdea(f: RadialFacts): Idea | null {
  const quarter = f.wave / 4;
  const long = [...f.sameWirePoints].sort((a, b) => Math.abs(a.length - quarter) - Math.abs(b.length - quarter))[0];
  const best = f.sameWire;
  if (!long || !best || best.length > (1 - aboutQuarter) * long.length || best.watts <= long.watts) return null;
  if (Math.abs(long.length / quarter - 1) > 0.5) return null;
  return {
    idea: `“Radials must be a quarter wave long.”`,
    refutation: `A quarter wave is ${metres(quarter)}: the same wire as ${shortText(long)} sends ${watts(long.watts)}, as ${shortText(best)} ${watts(best.watts)}.`,
  };
}

function numberIdea(f: RadialFacts): Idea {
  const most = f.byCount.at(-1) ?? f.most;
  const half = [...f.byCount].reverse().find((t) => t.count <= most.count / 2) ?? f.now;
  return {
    idea: "“It takes 120 radials or nothing.”",
    refutation: `Of ${watts(f.into)} in the antenna, ${watts(half.watts)} leave with ${radialsText(half)} and ${watts(most.watts)} with ${most.count}: the step is ${plainNumber(gained(half, most), 2)} dB.`,
  };
}
