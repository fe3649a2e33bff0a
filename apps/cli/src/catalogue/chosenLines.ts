import type { ListedLine } from "@feedpath/report";
import { nearestWord, wordForSaid } from "@feedpath/station-file";
import { wrongCommand } from "../tell/commandProblem";

const folded = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, " ");

/** The lines of those names, in their order; a name there is not is answered with the nearest. */
export function chosenLines(names: readonly string[], all: readonly ListedLine[]): ListedLine[] {
  return names.map((name) => {
    const found = all.find(({ entry }) => folded(entry.designation) === folded(name));
    if (found) return found;
    const known = all.map(({ entry }) => entry.designation);
    throw wrongCommand({
      place: "line",
      found: name,
      expected: "a line of the catalogue",
      message: `There is no line "${name}". All of them: feedpath catalogue`,
      nearest: wordForSaid(name, known) ?? nearestWord(name, known),
    });
  });
}
