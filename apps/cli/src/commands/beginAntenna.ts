import { findStarter, starters } from "@feedpath/engine";
import { nearestWord, parseQuantity, startingText } from "@feedpath/station-file";
import { wrongCommand } from "../tell/commandProblem";

const names = starters.map(({ name }) => name);

/** Hz, from which to which a usual antenna can be begun: beyond, its wires are no wires any more or no mast carries them. */
const [lowest, highest] = [1e6, 500e6];

/** A station file with a usual antenna. */
export function antennaText(antenna: string, frequency: string | undefined): string {
  const starter = findStarter(antenna);
  if (!starter) {
    throw wrongCommand({
      place: "--antenna",
      found: antenna,
      expected: `one of ${names.join(", ")}`,
      message: `There is no antenna "${antenna}" to begin with. There are: ${names.join(", ")}.`,
      nearest: nearestWord(antenna, names),
    });
  }
  return startingText(starter, frequencyOf(antenna, frequency));
}

function frequencyOf(antenna: string, frequency: string | undefined): number {
  const expected = "a frequency such as 7.1 MHz";
  const wrong = (message: string) =>
    wrongCommand({ place: "--frequency", found: frequency ?? "nothing", expected, message });
  if (frequency === undefined) throw wrong(`Say for which frequency: --antenna "${antenna}" --frequency "7.1 MHz".`);
  const read = parseQuantity(frequency, "frequency", { least: lowest, most: highest });
  if (!read.ok) throw wrong(read.fault.message);
  return read.value.value;
}

export const bothGiven = (antenna: string) =>
  wrongCommand({
    place: "--antenna",
    found: antenna,
    expected: "--antenna or --from",
    message: "An example has its antenna already: write --antenna or --from, not both.",
  });

export const frequencyAlone = (frequency: string) =>
  wrongCommand({
    place: "--frequency",
    found: frequency,
    expected: "--antenna beside it",
    message: `--frequency goes with an antenna: --antenna "${names[0]}" --frequency ${frequency}.`,
  });
