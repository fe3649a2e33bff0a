/** How voltage, heat and receiving of the present line were worked out. */
import type { WorkingStep } from "../../answer/answer";
import { fixedNumber, plainNumber, significantNumber } from "../../quantity/format";
import type { LineFacts } from "../../words/lineFacts";
import type { StudiedRow } from "./study";

export const bearingSteps = (f: LineFacts, row: StudiedRow): WorkingStep[] => [
  {
    text: `The highest voltage along it is ${plainNumber(row.highestVoltage, 0)} V rms at peak envelope power${f.present.voltageShare === null ? "; what it stands is not known." : `; in its worst band ${significantNumber(100 * f.present.voltageShare, 2)} % of its limit: ${f.present.voltageSays}.`}`,
    formula:
      "|V|^{2} = |V_{f}|^{2} e^{2\\alpha x} + |V_{b}|^{2} e^{-2\\alpha x} + 2 \\Re(V_{f} V_{b}^*) \\cos 2\\beta x",
    source: "the two waves of the telegrapher's equations, largest in the half wave next to the transmitter",
    explains: ["highestVoltage", "voltageUsed", "voltageUsedOfProposed", "voltageUsedOfCheap"],
  },
  ...heatStep(f),
  ...receiveStep(f),
];

function heatStep({ present }: LineFacts): WorkingStep[] {
  if (present.powerMargin === null) return [];
  return [
    {
      text: `Sending without end at the mean of the file's duty, its hottest place would reach what its insulation bears at ${significantNumber(present.powerMargin, 2)} times this power, in the band that heats it most.`,
      source:
        "steady heat balance of one metre in the manner of IEC 60287: skin effect and insulation heat it, convection, radiation or the soil carry it off (docs/physics.md)",
      explains: ["powerMargin", "powerMarginOfProposed", "powerMarginOfCheap"],
    },
  ];
}

function receiveStep({ present }: LineFacts): WorkingStep[] {
  if (present.receive === null) return [];
  return [
    {
      text: `On receiving, noise from outside falls with the signal: the path takes ${present.receive < 0.005 ? "less than 0.01" : fixedNumber(present.receive, 2)} dB of signal to noise, in the band where it takes most, though it takes ${fixedNumber(present.loss, 1)} dB on sending.`,
      formula:
        "f = f_a + (\\ell_c - 1)\\frac{T_c}{T_0} + \\ell_c (\\ell_t - 1)\\frac{T_t}{T_0} + \\ell_c \\ell_t (f_r - 1)",
      source: "ITU-R P.372, noise of a receiving system (from memory); reciprocity of the path",
      explains: ["receivePenalty", "receivePenaltyOfProposed", "receivePenaltyOfCheap"],
    },
  ];
}
