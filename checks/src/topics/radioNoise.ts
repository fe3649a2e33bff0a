/** Radio noise of a place after ITU-R P.372, and stages one after the other. */
import {
  behind,
  decibelsOf,
  factorOf,
  galacticNoise,
  manMadeNoise,
  type NoisePlace,
  noiseClasses,
} from "@feedpath/engine";
import { input, type PublishedRow } from "../ledger/publishedRow";
import type { Topic } from "../ledger/topic";

const placeOf = (row: PublishedRow): NoisePlace => row.inputs.place as NoisePlace;

/** c is the value at 1 MHz, d what a decade takes. */
function constants(row: PublishedRow) {
  const [at1, at10] = [1e6, 1e7].map((frequency) => manMadeNoise(placeOf(row), frequency));
  return { c: at1!, d: at1! - at10! };
}

function twoStages(row: PublishedRow) {
  const preamplifier = { noise: factorOf(input(row, "f1_dB")), gain: factorOf(input(row, "g_dB")) };
  return { "": decibelsOf(behind(preamplifier, factorOf(input(row, "line_dB") + input(row, "f2_dB")))) };
}

export const radioNoise: Topic = {
  name: "radioNoise",
  title: "Radio noise",
  evaluators: [
    { rows: /^p372\..+\.constants$/, compute: constants },
    { rows: /^p372\.galactic$/, compute: (row) => ({ "": galacticNoise(1e6 * input(row, "f_MHz")) ?? Number.NaN }) },
    {
      rows: /^p372\..+\.deciles$/,
      compute: (row) => {
        const { upper, lower } = noiseClasses[placeOf(row)];
        return { upper, lower };
      },
    },
    { rows: /^friis\./, compute: twoStages },
  ],
};
