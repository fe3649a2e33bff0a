/** Lossy lines with loads, SWR, return loss, and lines as matching sections. */
import {
  alongLine,
  type Complex,
  decibelsPerNeper,
  inputImpedance,
  lineFromOpenAndShort,
  lineLoss,
  quarterWaveBetween,
  reflectionOfSwr,
  returnLoss,
  swr,
  twoElementQ,
} from "@feedpath/engine";
import { complexInput, input, type PublishedRow } from "../ledger/publishedRow";
import type { Topic } from "../ledger/topic";
import { seriesSection, shuntStub, twelfthWave, twoElements } from "./matching";
import { losslessLine, metre } from "./plainLine";
import { printedStubs, printedTwoElements } from "./printedMatches";

const real = (re: number): Complex => ({ re, im: 0 });

function totalLoss(row: PublishedRow) {
  const load = real(50 * input(row, "SWR_at_load"));
  const nepers = input(row, "matched_loss_dB") / decibelsPerNeper;
  const line = metre(real(50), { re: nepers, im: 2 * Math.PI });
  const { atLoad, extra } = lineLoss(line, 1, load);
  return {
    total_loss_dB: atLoad,
    extra_dB: extra,
    SWR_at_input: swr(inputImpedance(line, 1, load), 50),
  };
}

function exactLine(row: PublishedRow) {
  const line = metre(complexInput(row, "Z0"), complexInput(row, "gamma*l (Np + j rad)"));
  const load = complexInput(row, "ZL");
  return { Zin: inputImpedance(line, 1, load), loss_dB: lineLoss(line, 1, load).atLoad };
}

/** Half a wavelength of lossless line into a load above its impedance: the greatest voltage is at the load. */
function greatest(row: PublishedRow) {
  const [power, z0, ratio] = [input(row, "P_W"), input(row, "Z0"), input(row, "SWR")];
  const resistance = z0 * ratio;
  const load = { voltage: real(Math.sqrt(power * resistance)), current: real(Math.sqrt(power / resistance)) };
  const states = alongLine(metre(real(z0), { re: 0, im: Math.PI }), 1, load, 40);
  const most = (phasors: readonly Complex[]) => Math.max(...phasors.map((x) => Math.hypot(x.re, x.im)));
  const voltage = most(states.voltage);
  return { V_rms: voltage, V_peak: Math.SQRT2 * voltage, I_rms: most(states.current) };
}

function standingWave(row: PublishedRow) {
  const rho = reflectionOfSwr(input(row, "SWR"));
  return { rho, return_loss_dB: returnLoss(rho), "reflected_power_%": 100 * rho ** 2 };
}

function openAndShort(row: PublishedRow) {
  const { z0, gammaLength } = lineFromOpenAndShort(complexInput(row, "Zoc"), complexInput(row, "Zsc"));
  return { Z0: z0, "gamma l": gammaLength, one_way_loss_dB: gammaLength.re * decibelsPerNeper };
}

/** A quarter wave of 75 ohm turns 50 ohm into this. */
const quarterWave = (row: PublishedRow) => ({
  "": inputImpedance(losslessLine(input(row, "Z"), 0.25), 1, real(input(row, "R1"))).re,
});

export const linesAndMatching: Topic = {
  name: "linesAndMatching",
  title: "Lossy lines, SWR and matching sections",
  evaluators: [
    { rows: /^loss\.total\./, compute: totalLoss },
    { rows: /^line\.exact\./, compute: exactLine },
    { rows: /^line\.vmax\./, compute: greatest },
    { rows: /^swr\./, compute: standingWave },
    { rows: /^line\.open_short$/, compute: openAndShort },
    { rows: /^line\.qwt\.75between$/, compute: quarterWave },
    {
      rows: /^line\.qwt\.50-/,
      compute: (row) => ({ "": quarterWaveBetween(input(row, "R1"), input(row, "R2")) }),
    },
    { rows: /^line\.series_section\./, compute: seriesSection },
    { rows: /^line\.twelfth\./, compute: twelfthWave },
    { rows: /^match\.shunt_stub\./, compute: shuntStub },
    { rows: /^match\.L\.(?!Q)/, compute: twoElements },
    { rows: /^match\.L\.Q\./, compute: (row) => ({ "": twoElementQ(input(row, "ratio")) }) },
    { rows: /^match\.pozar51$/, compute: printedTwoElements },
    { rows: /^match\.pozar52$/, compute: printedStubs },
  ],
};
