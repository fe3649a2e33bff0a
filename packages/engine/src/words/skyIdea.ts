/** The mistaken idea that `sky` corrects: the one that this station's own numbers refute. English. */
import { decibels, fixedNumber, metres } from "../quantity/format";
import { angle, isUpright, type SkyFacts, told, upwards } from "./sky";

export interface Idea {
  readonly idea: string;
  readonly refutation: string;
}

/** dB. */
const clearly = 1;
/** Share of the power that leaves near the strongest direction, above which the direction tells enough. */
const mostOfIt = 0.7;

const dbi = (gain: number): string => `${fixedNumber(gain, 1)} dBi`;

export function skyMistakenIdea(f: SkyFacts): Idea | null {
  const upright = isUpright(f);
  if (upright && f.reference && f.reference.maximum > f.strongest.gain + clearly) return uprightIdea(f, f.reference);
  if (!upright && f.overSoil && f.strongest.gain - f.gainAtFive > 3) return horizonIdea(f);
  if (f.nearMaximum < mostOfIt * f.radiated) return oneDirectionIdea(f);
  return null;
}

function uprightIdea(f: SkyFacts, reference: NonNullable<SkyFacts["reference"]>): Idea {
  const ahead =
    f.crossing === null
      ? `already at the lowest angles it is no stronger than that dipole`
      : `only below ${angle(f.crossing)} is it the stronger of the two`;
  return {
    idea: "“The low angle of a vertical is a gain by itself.”",
    refutation: `It is strongest ${upwards(f.strongest.elevation)}, with ${dbi(f.strongest.gain)}; a level dipole ${metres(reference.height)} high reaches ${dbi(reference.maximum)}: ${ahead}.`,
  };
}

const horizonIdea = (f: SkyFacts): Idea => ({
  idea: "“A dipole sends broadside at the horizon.”",
  refutation: `At 5° it is ${decibels(f.strongest.gain - f.gainAtFive)} weaker than ${upwards(f.strongest.elevation)}, and along the soil nothing leaves: ${told(f, f.below30)} of ${told(f, f.radiated)} go below 30°.`,
});

const oneDirectionIdea = (f: SkyFacts): Idea => ({
  idea: "“All of my signal goes in the strongest direction.”",
  refutation: `Within half an S-unit (3 dB) of it leave ${told(f, f.nearMaximum)} of ${told(f, f.radiated)}; the rest goes elsewhere.`,
});
