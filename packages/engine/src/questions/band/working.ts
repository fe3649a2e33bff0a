/** How the curves came about. */
import type { WorkingStep } from "../../answer/answer";
import { fixedNumber, megahertz, ohms, plainNumber, significantNumber, swrText } from "../../quantity/format";
import type { BandFacts } from "../../words/band";
import type { Worked } from "../common/worked";
import type { Sweep } from "./sweep";

/** Smaller differences are told as this: they mean nothing to anybody. */
const leastTold = 0.001;

export function bandWorking(worked: Worked, sweep: Sweep, facts: BandFacts): WorkingStep[] {
  return [...curveSteps(worked, sweep, facts), ...outsideStep(sweep, facts)];
}

/** What the outside of the line does to the lowest SWR. */
function outsideStep({ lowestWithoutOutside: without }: Sweep, f: BandFacts): WorkingStep[] {
  if (f.outsideShift === null || without === null) return [];
  return [
    {
      text: `With a perfect choke at the feed point the SWR at the transmitter would be lowest at ${megahertz(without)}: the outside of the line moves it by ${plainNumber(f.outsideShift / 1e3, 1)} kHz.`,
      source: "the same sweep with that choke; nothing else is changed",
      explains: ["outsideShift"],
    },
  ];
}

/** How the curve came about: interpolated from how many solves, or solved throughout. */
const curveSays = ({ solvedPoints, curve, interpolationError }: Sweep): string =>
  solvedPoints === 0
    ? `solved at each of the ${plainNumber(curve.length, 0)} frequencies of the curve, for no interpolation held`
    : `solved at ${plainNumber(solvedPoints, 0)} frequencies and interpolated between them for the ${plainNumber(curve.length, 0)} of the curve, in doubt by about ${significantNumber(Math.max(interpolationError, leastTold), 1)} Ω by that`;

export const curveMethod = (sweep: Sweep) => ({ name: "curve", says: curveSays(sweep) });

function curveSteps(worked: Worked, sweep: Sweep, facts: BandFacts): WorkingStep[] {
  const { marks } = sweep;
  const nearest = sweep.curve.reduce((best, p) =>
    Math.abs(p.frequency - facts.ends.frequency) < Math.abs(best.frequency - facts.ends.frequency) ? p : best,
  );
  const r = worked.point.ratedResistance;
  return [
    {
      text: `The antenna's impedance: ${curveSays(sweep)}.`,
      source:
        "moment method over the stated ground; rational interpolation after Nakatsukasa, Sete and Trefethen, SIAM J. Sci. Comput. 40 (2018)",
      explains: ["feedPointImpedance"],
    },
    {
      text: `At ${megahertz(nearest.frequency)} the feed point is at ${ohms(nearest.feedPoint)}:`,
      formula: "\\mathrm{SWR} = \\frac{1 + |\\Gamma|}{1 - |\\Gamma|}, \\; \\Gamma = \\frac{Z - R}{Z + R}",
      substituted: `\\mathrm{SWR} = ${fixedNumber(nearest.swrAtFeedPoint, 2)} \\; \\mathrm{on} \\; ${plainNumber(r, 1)} \\; \\Omega`,
      source: "definition; IEEE Std 145",
      explains: ["swrAtFeedPoint"],
    },
    {
      text: `Carried through the path with its loss, ${fixedNumber(nearest.lineLoss, 2)} dB in the lines at this impedance, the transmitter sees SWR ${swrText(nearest.swrAtTransmitter)}:`,
      formula: "Z_1 = Z_0 \\frac{Z_2 + Z_0 \\tanh \\gamma\\ell}{Z_0 + Z_2 \\tanh \\gamma\\ell}",
      source: "telegrapher's equations, exact for complex Z0",
      explains: ["swrAtTransmitter", "bestSwrInBand", "worstSwrInBand", "lowestSwr"],
    },
    {
      text: `SWR at the transmitter is lowest, ${swrText(marks.lowestSwr)}, at ${megahertz(marks.lowestSwrFrequency)}; ${
        marks.resonantFrequency === null
          ? "the feed point is not resonant within the span shown"
          : `the feed point is resonant (X = 0) at ${megahertz(marks.resonantFrequency)}`
      }.`,
      source: "search on the curve",
      explains: ["lowestSwrFrequency", "resonantFrequency", "usableWidth"],
    },
  ];
}
