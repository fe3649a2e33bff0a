/** Lines: a path at very many frequencies, and waves that go to and fro on it. */
import { chainOver, createSolutionMemory, type Part, partTwoPort } from "@feedpath/engine";
import { type Section, threeDigits } from "../report/section";
import { answerTo, exampleText, stationOf } from "../stations";
import { here, interleaved, ratioTo, timingNamed } from "../timing/interleaved";
import { timingTable } from "../timing/timingTable";
import { textbookCase, textbookName } from "./solves";

/** Five parts with loss: two cables by their sheets, plugs, a transformer, and a pair of clad steel by its build. */
const text = `feedpath: 1
station: Five parts
frequency: 7.1 MHz
transmitter: { power: 100 W }
path:
  - { line: RG-213/U, length: 28 m }
  - { connector: N, count: 2, loss: 0.05 dB }
  - { line: RG-58C/U, length: 3 m }
  - { transformer: 50 ohm to 200 ohm, loss: 0.2 dB }
  - { line: 450-ohm window line, length: 10 m }
antenna:
  dipole: { length: 20.1 m, height: 12 m, wire: 2 mm copper }
ground: free space
`;
const frequencies = Float64Array.from({ length: 10_000 }, (_, i) => 1.8e6 + 4.3e4 * i);
const around = { measured: {}, reference: 50 };
/** Fed by nearly nothing into nearly nothing: two hundred reflections and it goes on. */
const endless = { load: 1e6, source: 0.5 };
const club = "harbour-school-club";
const [many, each] = ["path of five parts at 10,000 frequencies", "the same, each part at each frequency by itself"];

function everyPart(parts: readonly Part[]): void {
  for (const frequency of frequencies) for (const part of parts) partTwoPort(part, frequency, around);
}

const echoes = "whole answer of `bounce`, 200 reflections, antenna kept";
const choice = "whole answer of `line`, 40 lines and what else could be done, antenna kept";

export async function lines(): Promise<Section> {
  const { parts } = stationOf(text, "five-parts").path;
  const memory = createSolutionMemory();
  const station = stationOf(exampleText(club), club);
  const timings = await interleaved(
    [
      textbookCase(100),
      here(many!, () => void chainOver(parts, frequencies, around)),
      here(each!, () => everyPart(parts)),
      here(echoes, () => void answerTo(station, "bounce", memory, endless)),
      here(choice, () => void answerTo(station, "line", memory)),
    ],
    9,
    5,
  );
  const base = timingNamed(timings, textbookName(100));
  const [swept, bounced] = [timingNamed(timings, many!), timingNamed(timings, echoes)];
  return {
    title: "Lines",
    budgets: [
      {
        what: "chain matrices of a path of five parts at 10,000 frequencies, warm",
        ...{ limit: 50, unit: "ms", bound: "most", measured: swept.median },
        against: `${threeDigits(ratioTo(swept, base))} times ${textbookName(100)}`,
      },
      {
        what: "whole answer of `bounce` with 200 reflections and their film, antenna kept, warm",
        ...{ limit: 50, unit: "ms", bound: "most", measured: bounced.median },
        against: `${threeDigits(ratioTo(bounced, base))} times ${textbookName(100)}`,
      },
    ],
    tables: [
      timingTable(
        "A path of five parts from 1.8 to 432 MHz, and questions about lines, warm",
        "case",
        timings,
        base,
        "Constants of lines come from a polynomial in the logarithm of frequency, held against exact values to 1e-10; the row after it works out every one, and does not even multiply them. Questions: the station of a dipole with what uncertain values do.",
      ),
    ],
    figures: [],
    troubles: [],
  };
}
