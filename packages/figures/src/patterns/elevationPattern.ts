/** The vertical cut as a polar picture: lobes with their gain and first hops, minima, and a dipole as high. */
import type { Answer } from "@feedpath/engine";
import { optionalNumber, requiredNumber } from "../kit/answerValues";
import { boxesAlong } from "../kit/box";
import type { Figure, FigureTable, Mark } from "../kit/figure";
import { createLabelBoard, type LabelBoard, type LabelPlace } from "../kit/labelBoard";
import { fixedText, wholeWattsText } from "../kit/numberText";
import { wrapText } from "../kit/textWidth";
import { numberedLines, tellsByNumber, tipNumbers } from "./numberedTips";
import {
  azimuthOfCut,
  bearingText,
  cutOf,
  type Extreme,
  gainText,
  isBehind,
  isNull,
  kilometresText,
  lobesUpwards,
  minima,
  pointOfCompass,
  upwardsText,
} from "./patternFacts";
import {
  frameMarks,
  outlineOf,
  type PatternOptions,
  type PolarFrame,
  patternMarks,
  polarFrame,
  referenceMarks,
  ringLabels,
  tipMark,
  topRing,
} from "./polarFrame";

/** Angle on the picture, degrees from the right hand. */
const angleOf = (answer: Answer, one: Extreme): number => (isBehind(answer, one) ? 180 - one.elevation : one.elevation);

/** dB by which the plane's strongest lobe may miss the strongest of all and still be it. */
const elsewhere = 0.05;

function titleOf(answer: Answer): string {
  const low = wholeWattsText(requiredNumber(answer, "radiatedBelow30"));
  const sky = wholeWattsText(requiredNumber(answer, "radiatedPower"));
  const most = requiredNumber(answer, "maximumGain");
  const [best] = lobesUpwards(answer);
  // The plane looked at may miss the strongest direction: then the title is of the plane, as the picture is.
  const elevation = requiredNumber(answer, "elevationOfMaximum");
  if (best && (best.gain < most - elsewhere || Math.abs(best.elevation - elevation) > 1)) {
    return `In this plane strongest ${upwardsText(best.elevation)}; over all ${low} of ${sky} leave below 30°`;
  }
  return `Strongest ${upwardsText(elevation)}; ${low} of ${sky} leave below 30°`;
}

const hopText = (one: Extreme): string =>
  one.hops === null || one.elevation > 89
    ? ""
    : `hop ${kilometresText(one.hops[0])} by E, ${kilometresText(one.hops[1])} by F`;

/** Lobes that carry words: the strongest few, each side once where both are alike. */
const mostLabels = 4;

function lobeLabels(answer: Answer, frame: PolarFrame, board: LabelBoard): Mark[] {
  const { s, radius } = frame;
  const styles = [
    { role: "fieldInk", size: 13 * s, weight: 600, halo: { role: "paper", width: 3 * s } },
    { role: "ink2", size: 12 * s, halo: { role: "paper", width: 3 * s } },
  ] as const;
  return lobesUpwards(answer)
    .slice(0, mostLabels)
    .flatMap((one) => {
      const angle = angleOf(answer, one);
      const first = `${upwardsText(one.elevation)}, ${gainText(one.gain)}`;
      const second = hopText(one);
      const wordings = second === "" ? [[first]] : [[first, ...second.split(", ")], [first]];
      const side = Math.abs(angle - 90) < 8 ? "middle" : angle < 90 ? "start" : "end";
      const places = wordings.flatMap((lines) =>
        [20, 34, 50, -34, -54, -74].flatMap((out): LabelPlace[] =>
          [0, 7, -7, 14, -14, 22].map((turn) => {
            const from = out > 0 ? radius : frame.radiusOf(one.gain);
            const [x, y] = frame.at(angle + turn, from + out * s);
            const anchor = out > 0 ? side : "middle";
            return { lines, x, y: out > 0 ? y - (lines.length - 1) * 14 * s : y, anchor };
          }),
        ),
      );
      return board.place(styles, places);
    });
}

/** What each number at a tip stands for. */
const lobeWords = (answer: Answer): string[] =>
  lobesUpwards(answer)
    .slice(0, mostLabels)
    .map((one) => {
      const side = one.elevation > 89 ? "" : ` towards ${pointOfCompass(one.azimuth)}`;
      const hops = hopText(one);
      return `${upwardsText(one.elevation)}${side}, ${gainText(one.gain)}${hops === "" ? "" : `, ${hops}`}`;
    });

/** More nulls than this are told by the table only. */
const mostNulls = 4;

function minimumLabels(answer: Answer, frame: PolarFrame, board: LabelBoard): Mark[] {
  const { s } = frame;
  const most = requiredNumber(answer, "maximumGain");
  const plane = azimuthOfCut(answer);
  const inPlane = ({ azimuth, elevation }: Extreme) =>
    elevation > 89.99 || Math.abs(Math.sin(((azimuth - plane) * Math.PI) / 180)) < 1e-3;
  const style = { role: "ink2", size: 12 * s, halo: { role: "paper", width: 3 * s } } as const;
  const nulls = minima(answer).filter((one) => inPlane(one) && isNull(one.gain, most));
  return nulls.slice(0, nulls.length > mostNulls ? 0 : mostNulls).flatMap((one) => {
    const angle = angleOf(answer, one);
    const text = `null ${upwardsText(one.elevation)}`;
    const places = [24, 40, 60, 80, 100].map((out): LabelPlace => {
      const [x, y] = frame.at(angle, frame.radiusOf(one.gain) + out * s);
      return { lines: [text], x, y, anchor: "middle" };
    });
    return board.placeClear(style, places);
  });
}

const angleTicks = (free: boolean): number[] => (free ? [0, 30, 60, 90, 120, 150, 180] : [30, 60, 90, 120, 150]);

function tickLabels(frame: PolarFrame, free: boolean, board: LabelBoard): Mark[] {
  const style = { role: "ink2", size: 12 * frame.s } as const;
  return angleTicks(free).flatMap((angle) => {
    const [x, y] = frame.at(angle, frame.radius + 9 * frame.s);
    const anchor = angle === 90 ? "middle" : angle < 90 ? "start" : "end";
    const text = `${angle > 90 ? 180 - angle : angle}°`;
    return board.placeClear(style, [{ lines: [text], x, y: y + 2 * frame.s, anchor }]);
  });
}

function noteLines(answer: Answer, hasDipole: boolean, width: number, s: number): string[] {
  const plane = azimuthOfCut(answer);
  const cut = `Right: towards ${bearingText(plane)}; left: ${pointOfCompass(plane + 180)}.`;
  const dipole = hasDipole ? " Dashed: a half-wave dipole as high as the antenna's top." : "";
  const hops = lobesUpwards(answer).some((l) => l.hops) ? " Hops are geometry, no prediction." : "";
  return wrapText(`${cut}${dipole}${hops}`, 12 * s, width - 8 * s);
}

/** Figure of the answer to `sky`: over ground the upper half, in free space all of it. */
export function elevationPattern(answer: Answer, options: PatternOptions): Figure {
  const { width, scale: s = 1 } = options;
  const cut = cutOf(answer, "elevationPattern");
  const free = cut.angles.length > 181;
  const side = width < 360 * s ? 38 * s : 110 * s;
  const radius = Math.min((width - 2 * side) / 2, 210 * s);
  const lobes = lobesUpwards(answer);
  const byNumber = tellsByNumber(width, s, lobes.length);
  const notes = [
    ...(byNumber ? numberedLines(lobeWords(answer), width, s) : []),
    ...noteLines(answer, cut.dipole !== null, width, s),
  ];
  const cy = (byNumber ? 40 : 62) * s + radius;
  const under = free ? radius + 40 * s : 24 * s;
  const height = cy + under + 14 * s + notes.length * 16 * s;
  const top = topRing(Math.max(...cut.gains, ...(cut.dipole ?? [])));
  const frame = polarFrame({ cx: width / 2, cy, radius, s }, top);
  const board = createLabelBoard(width, height);
  const outline = outlineOf(frame, cut.angles, cut.gains);
  boxesAlong(outline, 1.5 * s).forEach(board.avoidFirmly);
  if (cut.dipole) boxesAlong(outlineOf(frame, cut.angles, cut.dipole), 1.5 * s).forEach(board.avoid);
  const horizon: Mark = {
    kind: "line",
    x1: frame.cx - radius - 14 * s,
    y1: cy,
    x2: frame.cx + radius + 14 * s,
    y2: cy,
    stroke: { role: free ? "hair" : "soil", width: 2 * s },
  };
  board.reserve({ left: 0, right: width, top: cy - 2 * s, bottom: cy + 2 * s });
  const tips = lobes.map((one) => ({ angle: angleOf(answer, one), gain: one.gain }));
  const tipPoints = tips.map(({ angle, gain }) => frame.at(angle, frame.radiusOf(gain)));
  for (const [x, y] of tipPoints)
    board.reserve({ left: x - 5 * s, right: x + 5 * s, top: y - 5 * s, bottom: y + 5 * s });
  const texts = notes.flatMap((line, i) =>
    board.place({ role: "ink2", size: 12 * s }, [
      { lines: [line], x: 4 * s, y: height - (notes.length - 1 - i) * 16 * s - 6 * s },
    ]),
  );
  const labels = [
    ...texts,
    ...ringLabels(frame, 0, [0, 15 * s], board),
    ...(byNumber ? tipNumbers(frame, tips.slice(0, mostLabels), board) : lobeLabels(answer, frame, board)),
    ...minimumLabels(answer, frame, board),
    ...tickLabels(frame, free, board),
  ];
  return {
    name: "elevationPattern",
    title: titleOf(answer),
    width,
    height,
    scale: s,
    marks: [
      ...frameMarks(frame, free ? 360 : 180),
      ...patternMarks(frame, outline),
      ...(cut.dipole ? referenceMarks(frame, outlineOf(frame, cut.angles, cut.dipole)) : []),
      horizon,
      ...tipPoints.map((point) => tipMark(point, s)),
      ...labels,
    ],
    description: describe(answer),
    table: tableOf(answer),
  };
}

function describe(answer: Answer): string {
  const lobes = lobesUpwards(answer).map((one) => {
    const hops = hopText(one);
    return `${upwardsText(one.elevation)} towards ${bearingText(one.azimuth)}, ${gainText(one.gain)}${hops === "" ? "" : `, ${hops}`}`;
  });
  const all = lobes.length === 0 ? "the same at all angles" : lobes.join("; ");
  const more = optionalNumber(answer, "gainAgainstDipole");
  const dipole =
    more === null
      ? ""
      : ` At the angle looked at it is ${fixedText(Math.abs(more), 1)} dB ${more < 0 ? "below" : "above"} a half-wave dipole as high.`;
  return `Gain by elevation through ${bearingText(azimuthOfCut(answer))}, in dBi by radius. Lobes: ${all}.${dipole}`;
}

const every = 5;

function tableOf(answer: Answer): FigureTable {
  const cut = cutOf(answer, "elevationPattern");
  const columns = [
    { name: "angle from the horizon in front", unit: "°" },
    { name: "gain", unit: "dBi" },
    ...(cut.dipole ? [{ name: "gain of a dipole as high", unit: "dBi" }] : []),
  ];
  const rows = cut.angles.flatMap((angle, i) =>
    i % every === 0 ? [[angle, cut.gains[i]!, ...(cut.dipole ? [cut.dipole[i]!] : [])]] : [],
  );
  return { caption: "Gain by elevation", columns, rows };
}
