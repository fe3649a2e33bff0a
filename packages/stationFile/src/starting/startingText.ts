/** A station file to begin with: one of the usual antennas at a frequency, fed as usual. */
import type { Starter } from "@feedpath/engine";
import { Document, isMap, isScalar, isSeq, visit } from "yaml";
import { formatAmount } from "../units/formatQuantity";
import { grammarVersion } from "../versions/version";
import { writeAntenna } from "../writing/writeAntenna";
import { type Branch, writing } from "../writing/writing";
import { pathText } from "./pathText";

/** Longest entry written in one line. */
const lineLength = 140;

/** A tree of texts with each place and each short entry in one line. */
function inFewLines(tree: Branch): string {
  const document = new Document(tree, { schema: "failsafe", aliasDuplicateObjects: false });
  visit(document, {
    Collection: (_, node, path) => {
      const flat = isSeq(node) && node.items.every((item) => isScalar(item));
      const short = isMap(node) && path.length > 3 && JSON.stringify(node.toJSON()).length < lineLength;
      if (flat || short) node.flow = true;
    },
  });
  return document.toString({ lineWidth: 0 }).trimEnd();
}

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
    inFewLines({ antenna }),
    "ground: { permittivity: 13, conductivity: 5 mS/m }",
    "",
  ].join("\n");
}
