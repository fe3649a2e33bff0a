/** How the lines were compared, step by step, with the numbers put in. */
import type { WorkingStep } from "../../answer/answer";
import { constantsOf } from "../../chain/edges";
import { fixedNumber, ohms, plainNumber, significantNumber, swrText, watts } from "../../quantity/format";
import type { LineFacts } from "../../words/lineFacts";
import { arrangementStep, endSteps, lengthSteps, powerStep, spacingStep, twinStep } from "./alternativeSteps";
import { bandName } from "./bandName";
import { bearingSteps } from "./bearingSteps";
import type { Findings } from "./findings";
import { mayBringLess } from "./ranking";
import { worstOf } from "./study";

export const lineWorking = (f: LineFacts, found: Findings): WorkingStep[] => [
  ...presentSteps(f, found),
  rankingStep(found),
  ...proposalStep(f),
  ...lengthSteps(found),
  ...endSteps(found),
  ...twinStep(found),
  ...spacingStep(found),
  ...arrangementStep(found),
  powerStep(f),
];

function presentSteps(f: LineFacts, { study, bench }: Findings): WorkingStep[] {
  const row = study.present.rows[worstOf(study.present)]!;
  const { part } = bench.replaced;
  const frequency = row.band.frequency.value;
  const { z0, gamma } = constantsOf(part, frequency);
  const length = part.length.value;
  const source = part.line.sources[0];
  return [
    {
      text: `The present line on ${bandName(row.band.name, frequency)}, where it brings least: closed with its own ${ohms(z0, 2)} it would take`,
      formula: "L_0 = \\alpha \\ell",
      substituted: `${significantNumber((100 * row.matched) / length, 3)} \\; \\mathrm{dB/100\\,m} \\times ${plainNumber(length, 2)} \\; \\mathrm{m} = ${fixedNumber(row.matched, 3)} \\; \\mathrm{dB}`,
      source: source ? `${source.source} (${source.status})` : "the station file",
      explains: ["lossOfPresent"],
    },
    {
      text: `At the real load, with SWR ${swrText(row.swrOnLine)} on the line, it takes ${fixedNumber(row.loss, 3)} dB: the mismatch adds ${fixedNumber(row.added, 3)} dB, and ${watts(row.watts)} of ${watts(row.delivered)} reach the antenna through the whole path.`,
      formula: "V_1 = V_2 \\cosh \\gamma\\ell + I_2 Z_0 \\sinh \\gamma\\ell",
      substituted: `\\gamma\\ell = ${significantNumber(gamma.re * length, 3)} + j\\,${significantNumber(gamma.im * length, 4)}`,
      result: { value: row.loss, unit: "dB" },
      source:
        "telegrapher's equations, exact for complex Z0; every other line is put in the same place, its antenna kept",
      explains: ["lossOfPresent", "addedByMismatch", "wattsOfPresent", "wattsOfProposed", "wattsOfCheap"],
    },
    ...bearingSteps(f, row),
  ];
}

function rankingStep({ matters, ranked, bench }: Findings): WorkingStep {
  const by =
    matters === "watts"
      ? "watts into the antenna in the worst band of each line: the antenna is the same, so the watts to the sky stand in the same order"
      : `${matters} of the run of ${plainNumber(bench.replaced.part.length.value, 1)} m, lines that bring over ${mayBringLess} dB less than the present one behind all others`;
  return {
    text: `${ranked.length} lines are ranked by ${by}. SWR is never a rank. What is not known of a line counts as worst.`,
    source: "our rule",
    explains: ["wattsOfFirst"],
  };
}

function proposalStep(f: LineFacts): WorkingStep[] {
  if (!f.proposal) return [];
  return [
    {
      text:
        f.matters === "watts"
          ? `Proposed is ${f.proposal.name}: of the lines that would stand there as they are and come within 1 dB of the best, the one of least price, else least weight, else least diameter, as far as these are known.`
          : `Proposed is ${f.proposal.name}: of the lines that would stand there as they are, the first by ${f.matters}.`,
      formula: "G = 10 \\log_{10} \\frac{P_2}{P_1}",
      substituted: `10 \\log_{10} \\frac{${plainNumber(f.proposal.watts, 1)}}{${plainNumber(f.present.watts, 1)}} = ${fixedNumber(f.proposal.gained, 2)} \\; \\mathrm{dB}`,
      result: { value: f.proposal.gained, unit: "dB" },
      source: "our rule",
      explains: ["gainedByProposed", "wattsMoreFromProposed"],
    },
  ];
}
