import type { Station } from "@feedpath/engine";
import { type ListedLine, ownFamily } from "@feedpath/report";
import { lineCatalogue, nearestWord, wordForSaid } from "@feedpath/station-file";
import { wrongCommand } from "../tell/commandProblem";

/** Every line one can choose: those a station describes itself first, then the catalogue. */
export function listedLines(station: Station | null): ListedLine[] {
  const own = (station?.lines ?? []).map((entry) => ({ entry, family: ownFamily, own: true }));
  // An own line may be a catalogue line with something added, a price: it stands for both.
  const rest = lineCatalogue.filter(({ designation }) => !own.some(({ entry }) => entry.designation === designation));
  return [...own, ...rest.map((entry) => ({ entry, family: entry.family, own: false }))];
}

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
