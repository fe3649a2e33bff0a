/** How the lengths came about. */
import type { WorkingStep } from "../../answer/answer";
import { fixedNumber, megahertz, plainNumber, significantNumber, swrText, watts } from "../../quantity/format";
import { centimetres, metres3, type TrimFacts } from "../../words/trim";
import { farShare } from "./facts";
import type { LineDoubt, MovedZero } from "./lineDoubt";
import type { Shares } from "./shares";
import type { Study } from "./study";

/** Smaller differences are told as this: they mean nothing to anybody. */
const leastTold = 0.001;
const ohmsTold = (error: number): string => `${significantNumber(Math.max(error, leastTold), 1)} Ω`;

export interface Shown {
  readonly study: Study;
  readonly facts: TrimFacts;
  readonly shares: Shares;
  readonly line: LineDoubt | null;
  readonly moved: MovedZero | null;
}

export function trimWorking(shown: Shown): WorkingStep[] {
  return [
    lengthStep(shown),
    ...sharesStep(shown),
    ...sensitivityStep(shown),
    ...measuredStep(shown),
    ...lineSteps(shown),
  ];
}

function lengthStep({ study: { scan }, facts: f }: Shown): WorkingStep {
  const least =
    f.target === null || f.swrBest === null || f.wattsBest === null
      ? "it has no lowest place there"
      : `it is lowest, ${swrText(f.swrBest)}, with ${metres3(f.target)}, where ${watts(f.wattsBest)} reach the antenna; now ${watts(f.wattsNow)} do at SWR ${swrText(f.swrNow)}`;
  const resonant =
    f.resonance === null || f.swrResonant === null
      ? "X does not cross zero there"
      : `X = 0 at the feed point is with ${metres3(f.resonance)}, SWR ${swrText(f.swrResonant)}`;
  return {
    text: `The antenna was solved at ${plainNumber(scan.feed.solved, 0)} lengths from ${metres3(scan.span.from)} to ${metres3(scan.span.to)} at ${megahertz(f.frequency)} and interpolated between them; solves between these lengths differ by at most ${ohmsTold(scan.feed.error)}. Seen through the path ${least}; ${resonant}.`,
    formula: "\\mathrm{SWR} = \\frac{1 + |\\Gamma|}{1 - |\\Gamma|}, \\; \\Gamma = \\frac{Z - R}{Z + R}",
    source: "moment method over the stated ground; Berrut and Trefethen, SIAM Review 46 (2004)",
    explains: [
      "lengthForLowestSwr",
      "lengthForLowestSwrAtFeedPoint",
      "lengthForResonance",
      "lowestSwrByTrimming",
      "wattsGained",
    ],
  };
}

const signed = (length: number): string => `${length < 0 ? "−" : "+"}${centimetres(length)}`;

function sharesStep({ shares: s, facts: f }: Shown): WorkingStep[] {
  const steps: [string, number | null][] = [
    ["thickness and form of the bare wire, with its ends", s.thickness],
    ["insulation", s.insulation],
    ["the ground at this height, and what is connected to it", s.ground],
    [
      s.path === null
        ? "lowest SWR at the transmitter instead of X = 0 at the wire"
        : "lowest SWR at the wire instead of X = 0",
      s.lowestSwr,
    ],
    ["seen through the path", s.path],
  ];
  const told = steps.flatMap(([what, by]) => (by === null ? [] : [`${what} ${signed(by)}`]));
  if (told.length === 0) return [];
  const start = s.inVacuum === null ? "Of the length" : `From ${metres3(s.inVacuum)}, the wave's own length,`;
  const end = f.target === null ? "" : ` That makes ${metres3(f.target)}.`;
  return [
    {
      text: `${start} each step changes: ${told.join("; ")}.${end} Each was solved anew: without ground, and without ground and insulation.`,
      source: "moment method; insulation as a thin sleeve, quasi-static",
      explains: [
        "lengthInVacuum",
        "shareOfThicknessAndForm",
        "shareOfInsulation",
        "shareOfGround",
        "shareOfLowestSwr",
        "shareOfPath",
      ],
    },
  ];
}

function sensitivityStep({ study: { plane, dips }, facts: f }: Shown): WorkingStep[] {
  if (!plane || !dips || f.kilohertzPerCentimetre === null) return [];
  return [
    {
      text: `How the lowest SWR moves was followed over ${plainNumber(dips.lengths.length, 0)} lengths on ${plainNumber(plane.feed.solved, 0)} solves in length and frequency (differences to others at most ${ohmsTold(plane.feed.error)}). At ${megahertz(f.frequency)} a centimetre at ${f.ends[0]!.place} moves it by ${significantNumber(f.kilohertzPerCentimetre, 3)} kHz. The ladder is this curve read backwards; a minus is cut.`,
      formula: "\\frac{\\Delta f}{\\Delta \\ell}",
      substituted: `\\frac{\\Delta f}{\\Delta \\ell} = ${fixedNumber(f.kilohertzPerCentimetre, 2)}\\,\\mathrm{kHz/cm}`,
      source: "moment method, each length solved on its own; no rule of one over the length",
      explains: ["kilohertzPerCentimetre", "lowestSwrFrequency", "resonantFrequency", "changeAtEachEnd"],
    },
  ];
}

function measuredStep({ facts: f }: Shown): WorkingStep[] {
  const { measured } = f;
  if (!measured) return [];
  const explains = [
    "measuredLowest",
    "lengthAsMeasured",
    "actsLongerBy",
    "swrAsMeasured",
    "changeAtEachEnd",
    "firstStepAtEachEnd",
  ];
  if (measured.equivalent === null || measured.change === null) {
    const why = measured.far
      ? `It lies more than ${plainNumber(100 * farShare, 0)} % from ${megahertz(f.frequency)}: no length is read from it.`
      : "The dip cannot be followed from there to the wanted frequency: no length is read from it.";
    return [{ text: `Measured lowest: ${megahertz(measured.dip)}. ${why}`, source: "our rule", explains }];
  }
  const goal = measured.equivalent + measured.change;
  return [
    {
      text: `Worked out, the SWR is lowest at ${megahertz(measured.dip)} with ${metres3(measured.equivalent)} of wire: your ${metres3(f.present)} behave like that. It is lowest at ${megahertz(f.frequency)} with ${metres3(goal)}. The difference comes on or off:`,
      formula: "\\Delta \\ell = \\ell_{2} - \\ell_{1}",
      substituted: `\\Delta \\ell = ${fixedNumber(goal, 2)} - ${fixedNumber(measured.equivalent, 2)} = ${fixedNumber(measured.change, 2)}\\,\\mathrm{m}`,
      source: "the curve of the step before; what makes the real wire differ is taken to stay the same",
      explains,
    },
  ];
}

function lineSteps({ line, moved }: Shown): WorkingStep[] {
  const steps: WorkingStep[] = [];
  if (line) {
    const shack =
      line.inShack === null
        ? "in the shack X does not cross zero near by"
        : `in the shack X = 0 is read at ${megahertz(line.inShack)}`;
    const shift =
      line.zeroShift === null || line.dipShift === null
        ? ""
        : ` A metre more of ${line.line} moves X = 0 in the shack by ${fixedNumber(line.zeroShift / 1e3, 0)} kHz and the lowest SWR by ${fixedNumber(line.dipShift / 1e3, 0)} kHz.`;
    steps.push({
      text: `With ${metres3(line.length)}, X = 0 at the feed point is at ${megahertz(line.atFeedPoint)}; ${shack}, and the lowest SWR at ${megahertz(line.dip)}.${shift}`,
      source: "telegrapher's equations, exact for complex Z0",
      explains: ["zeroReactanceInShack", "zeroReactanceShiftOfOneMetre", "lowestSwrShiftOfOneMetre"],
    });
  }
  if (moved) {
    const why = moved.assumed
      ? "a line 2 % longer or shorter than told (common practice, no source)"
      : "what the file leaves in doubt of the path";
    steps.push({
      text: `The sweep moved through the path to the feed point crosses X = 0 at ${megahertz(moved.atFeedPoint)}; ${megahertz(moved.low)} to ${megahertz(moved.high)} with ${why}.`,
      formula: "Z_{2} = \\frac{d Z_{1} - b}{a - c Z_{1}}",
      source: "two-port of the path inverted",
      explains: ["measuredZeroReactance", "measuredZeroReactanceAtFeedPoint"],
    });
  }
  return steps;
}
