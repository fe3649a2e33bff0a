/** Every topic of the ledger, in its order. */
import type { Topic } from "../ledger/topic";
import { antennas } from "./antennas";
import { breakdownAndPower } from "./breakdownAndPower";
import { cables } from "./cables";
import { coaxialTheory } from "./coaxialTheory";
import { cylindricalDipoles } from "./cylindricalDipoles";
import { ground } from "./ground";
import { linesAndMatching } from "./linesAndMatching";
import { parallelWire } from "./parallelWire";
import { radioNoise } from "./radioNoise";
import { bandsMetersCoils, exposure, practice, safety } from "./smallTopics";
import { sommerfeld } from "./sommerfeld";
import { touchstone } from "./touchstone";

export const allTopics: readonly Topic[] = [
  coaxialTheory,
  cables,
  parallelWire,
  linesAndMatching,
  ground,
  antennas,
  cylindricalDipoles,
  sommerfeld,
  touchstone,
  bandsMetersCoils,
  breakdownAndPower,
  radioNoise,
  exposure,
  safety,
  practice,
];
