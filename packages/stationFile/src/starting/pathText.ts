/** The path of a station to begin with, as lines of its file: how its kind of antenna is usually fed. */
import type { Feeding } from "@feedpath/engine";
import { formatAmount } from "../units/formatQuantity";

/** m/s, exact (SI). */
const speedOfLight = 299_792_458;
/** Velocity factor of the branches of a tee. */
const velocity = 0.66;

const choke = "- { choke: between 1 kohm and 5 kohm }";

/** Lines of text behind `path:`. */
export function pathText(feeding: Feeding, frequency: number): readonly string[] {
  const line = `- { line: RG-213/U, length: ${frequency > 50e6 ? 10 : 25} m }`;
  switch (feeding.kind) {
    case "line":
      return [line, choke];
    case "balun":
      return [line, `- { balun: 50 ohm to ${feeding.ohms} ohm, kind: current, loss: between 0.1 dB and 0.4 dB }`];
    case "transformer":
      return [line, choke, `- { transformer: 50 ohm to ${feeding.ohms} ohm, loss: between 0.2 dB and 0.8 dB }`];
    case "tuner at the antenna":
      return [line, choke, tuner("coaxial")];
    case "tuner and pair line":
      return [
        "- { line: RG-213/U, length: 2 m }",
        tuner("balanced"),
        "- { line: { wire: 1.6 mm copper, spacing: 100 mm }, length: 20 m, name: pair line }",
      ];
    case "line to one feed":
      return [line, choke, `- { feed: ${feeding.feed} }`];
    case "tee":
      return [line, "- tee: junction box", "  branches:", ...branches(feeding.wavelengths, frequency)];
  }
}

const tuner = (output: string): string =>
  `- { tuner: L, capacitors: { range: 10 pF to 1 nF, Q: 1000 }, coil: { range: 0.1 uH to 40 uH, Q: 200 }, output: ${output} }`;

function branches(wavelengths: Readonly<Record<string, number>>, frequency: number): readonly string[] {
  const oneWave = (velocity * speedOfLight) / frequency;
  const cable = `{ impedance: 75 ohm, velocity: ${velocity}, loss: { 7 MHz: 2 dB/100 m, 144 MHz: 9 dB/100 m } }`;
  return Object.entries(wavelengths).map(([feed, waves]) => {
    const length = formatAmount(Number((waves * oneWave).toPrecision(4)), "length");
    return `    ${feed}: [{ line: ${cable}, length: ${length} }, { feed: ${feed} }]`;
  });
}
