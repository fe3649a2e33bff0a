/** The pattern around, with what is near by and without it. */
import type { Answer } from "@feedpath/engine";
import { numbersOf, requiredNumber, requiredTable } from "../kit/answerValues";
import { boxesAlong } from "../kit/box";
import type { Figure } from "../kit/figure";
import { createLabelBoard } from "../kit/labelBoard";
import { wrapText } from "../kit/textWidth";
import { compassAngle, compassLabels } from "./compass";
import { bearingText, gainText, upwardsText } from "./patternFacts";
import {
  frameMarks,
  outlineOf,
  type PatternOptions,
  patternMarks,
  polarFrame,
  referenceMarks,
  ringLabels,
  topRing,
} from "./polarFrame";

const gainsOf = (answer: Answer, name: string): number[] => numbersOf(requiredTable(answer, name), "gain");

/** Figure of the answer to `nearby`. */
export function nearbyPattern(answer: Answer, options: PatternOptions): Figure {
  const { width, scale: s = 1 } = options;
  const azimuths = numbersOf(requiredTable(answer, "azimuthCut"), "azimuth");
  const [now, before] = [gainsOf(answer, "azimuthCut"), gainsOf(answer, "azimuthCutWithout")];
  const up = upwardsText(requiredNumber(answer, "elevationOfMaximum"));
  const side = width < 360 * s ? 46 * s : 110 * s;
  const radius = Math.min((width - 2 * side) / 2, 170 * s);
  const notes = wrapText(
    `Gain ${up}, by compass, north up. Filled: as it stands. Dashed: without what is near by.`,
    12 * s,
    width - 8 * s,
  );
  const cy = radius + 40 * s;
  const height = cy + radius + 30 * s + notes.length * 16 * s;
  const frame = polarFrame({ cx: width / 2, cy, radius, s }, topRing(Math.max(...now, ...before)));
  const board = createLabelBoard(width, height);
  const angles = azimuths.map(compassAngle);
  const [outline, other] = [outlineOf(frame, angles, now), outlineOf(frame, angles, before)];
  for (const line of [outline, other]) boxesAlong(line, 1.5 * s).forEach(board.avoid);
  const texts = notes.flatMap((line, i) =>
    board.place({ role: "ink2", size: 12 * s }, [
      { lines: [line], x: 4 * s, y: height - (notes.length - 1 - i) * 16 * s - 6 * s },
    ]),
  );
  const labels = [...texts, ...compassLabels(frame, board), ...ringLabels(frame, 60, [0, -3 * s], board)];
  return {
    name: "nearbyPattern",
    title: titleOf(azimuths, now, before, up),
    width,
    height,
    scale: s,
    marks: [...frameMarks(frame, 360), ...patternMarks(frame, outline), ...referenceMarks(frame, other), ...labels],
    description: `Gain ${up} by compass, in dBi by radius, as the station stands and without what is near by. ${titleOf(azimuths, now, before, up)}.`,
    table: {
      caption: `Gain around, ${up}`,
      columns: [
        { name: "azimuth", unit: "°" },
        { name: "gain as it stands", unit: "dBi" },
        { name: "gain without what is near by", unit: "dBi" },
      ],
      rows: azimuths.flatMap((azimuth, i) => (i % 5 === 0 ? [[azimuth, now[i]!, before[i]!]] : [])),
    },
  };
}

/** Largest changes told of directions that matter: within this of the strongest, dB. */
const worthTelling = 10;

function titleOf(azimuths: readonly number[], now: readonly number[], before: readonly number[], up: string): string {
  const most = Math.max(...now, ...before);
  const changes = azimuths.map((azimuth, i) => ({
    azimuth,
    change: now[i]! - before[i]!,
    strong: Math.max(now[i]!, before[i]!) > most - worthTelling,
  }));
  const [largest] = changes.filter((c) => c.strong).sort((a, b) => Math.abs(b.change) - Math.abs(a.change));
  if (!largest || Math.abs(largest.change) < 0.5) return `What is near by leaves the pattern ${up} as it is`;
  const more = largest.change > 0 ? "stronger" : "weaker";
  const by = gainText(Math.abs(largest.change)).replace("dBi", "dB");
  return `What is near by makes it ${by} ${more} towards ${bearingText(largest.azimuth)}, ${up}`;
}
