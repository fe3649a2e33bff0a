/** A station file to begin with: one of the usual antennas at a frequency, fed as usual. */
import type { Starter } from "@feedpath/engine";
import { stringify } from "yaml";
import { formatAmount } from "../units/formatQuantity";
import { grammarVersion } from "../versions/version";
import { writeAntenna } from "../writing/writeAntenna";
import { writing } from "../writing/writing";
import { pathText } from "./pathText";

/** Share of the frequency to either side that the band of the new station takes in. */
const halfBand = 0.01;

/** Text of a station file with the starter's usual dimensions at `frequency` (Hz). It reads without a problem. */
export function startingText(starter: Starter, frequency: number): string {
  const megahertz = (f: number): string => formatAmount(Number(f.toPrecision(5)), "frequency");
  const title = `${starter.name.charAt(0).toUpperCase()}${starter.name.slice(1)} for ${megahertz(frequency)}`;
  const antenna = writeAntenna(writing([]), starter.at(frequency), "antennas.0");
  return [
    `# ${title}: ${starter.says}.`,
    `# Dimensions: ${starter.rule}.`,
    "# Everything below is a beginning: put in what you have.",
    `feedpath: ${grammarVersion}`,
    `station: ${title}`,
    `frequency: ${formatAmount(frequency, "frequency")}`,
    `band: ${megahertz(frequency * (1 - halfBand))} to ${megahertz(frequency * (1 + halfBand))}`,
    "transmitter: { power: 100 W, duty: 40 %, designed for: 50 ohm, earthed: floating }",
    "path:",
    ...pathText(starter.feeding, frequency).map((line) => `  ${line}`),
    stringify({ antenna }, { lineWidth: 0, schema: "failsafe", aliasDuplicateObjects: false }).trimEnd(),
    "ground: { permittivity: 13, conductivity: 5 mS/m }",
    "",
  ].join("\n");
}
