/** Volts of the source without load, step by step. */
import type { Signal } from "./parameters";

interface EmfWanted {
  readonly steps: number;
  readonly timeStep: number;
  readonly sections: number;
  readonly frequency: number;
  /** Volts: rms of a carrier, height of a step or pulse. */
  readonly emf: number;
  /** Quarters of a period by which a carrier is ahead; one that is compared with another comes up softly. */
  readonly quarter: number;
  readonly softly: boolean;
}

/** Share of one way along the line in which a step rises, and for which a pulse lasts. */
const riseShare = 0.05;
const pulseShare = 0.25;

/** Half a cosine from 0 to 1. */
const rising = (share: number): number => (share >= 1 ? 1 : share <= 0 ? 0 : (1 - Math.cos(Math.PI * share)) / 2);

/** A carrier starts at a zero of its swing, or comes up within its first period; a step rises along half a cosine; a pulse is one whole cosine. */
export function emfOf(
  signal: Signal,
  { steps, timeStep, sections, frequency, emf, quarter, softly }: EmfWanted,
): Float64Array {
  const volts = new Float64Array(steps);
  for (let n = 0; n < steps; n++) {
    const way = n / sections;
    const periods = frequency * n * timeStep;
    if (signal === "step") volts[n] = emf * rising(way / riseShare);
    else if (signal === "pulse")
      volts[n] = emf * (way < pulseShare ? rising(1 - Math.abs(2 * (way / pulseShare) - 1)) : 0);
    else volts[n] = Math.SQRT2 * emf * (softly ? rising(periods) : 1) * Math.sin(2 * Math.PI * (periods + quarter / 4));
  }
  return volts;
}
