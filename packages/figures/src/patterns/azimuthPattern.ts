/** The cut around at one elevation as a polar picture, north up: lobes and minima by compass, and a dipole as high. */
import type { Answer } from "@feedpath/engine";
import { boxesAlong } from "../kit/box";
import type { Figure, FigureTable, Mark } from "../kit/figure";
import { createLabelBoard, type LabelBoard, type LabelPlace } from "../kit/labelBoard";
import { fixedText } from "../kit/numberText";
import { wrapText } from "../kit/textWidth";
import { compassAngle, compassLabels } from "./compass";
import { numberedLines, tellsByNumber, tipNumbers } from "./numberedTips";
import {
  bearingText,
  cutOf,
  type Extreme,
  elevationOfCut,
  gainText,
  isNull,
  lobesAround,
  minima,
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

const mostLabels = 4;

const minimaAround = (answer: Answer): Extreme[] => {
  const own = elevationOfCut(answer);
  return minima(answer).filter((one) => Math.abs(one.elevation - own) < 1e-6);
};

/** Less than a decibel around is told as the same all round, and then has no lobes worth words. */
const isRound = (gains: readonly number[]): boolean => Math.max(...gains) - Math.min(...gains) < 1;

/** The strongest lobes around, which carry words; none where it is the same all round. */
const lobesTold = (answer: Answer): Extreme[] =>
  isRound(cutOf(answer, "azimuthPattern").gains)
    ? []
    : [...lobesAround(answer)].sort((a, b) => b.gain - a.gain).slice(0, mostLabels);

const lobeWords = (answer: Answer): string[] =>
  lobesTold(answer).map((one) => `towards ${bearingText(one.azimuth)}, ${gainText(one.gain)}`);

function titleOf(answer: Answer): string {
  const { gains } = cutOf(answer, "azimuthPattern");
  const up = upwardsText(elevationOfCut(answer));
  const start = `${up.charAt(0).toUpperCase()}${up.slice(1)}`;
  const [best] = [...lobesAround(answer)].sort((a, b) => b.gain - a.gain);
  const range = Math.max(...gains) - Math.min(...gains);
  if (!best || isRound(gains))
    return `${start} it is the same all round, within ${fixedText(Math.max(range, 0.1), 1)} dB`;
  const low = minimaAround(answer).reduce((least, one) => Math.min(least, one.gain), best.gain);
  const deep = best.gain - low;
  const depth = deep > 40 ? "a deep null" : `${fixedText(deep, 0)} dB less where it is weakest`;
  return `${start} it is strongest towards ${bearingText(best.azimuth)}, with ${depth}`;
}

function labelPlaces(frame: PolarFrame, azimuth: number, lines: readonly string[], gain: number): LabelPlace[] {
  const { s } = frame;
  const angle = compassAngle(azimuth);
  const sideways = Math.cos((angle * Math.PI) / 180);
  const outer = Math.abs(sideways) < 0.3 ? "middle" : sideways > 0 ? "start" : "end";
  return [14, 24, 36].flatMap((out) =>
    [0, 8, -8, 16, -16].flatMap((turn): LabelPlace[] => {
      const [x, y] = frame.at(angle + turn, frame.radius + out * s);
      const [ix, iy] = frame.at(angle + turn, frame.radiusOf(gain) - (out + 8) * s);
      const [mx, my] = frame.at(angle + turn, frame.radiusOf(gain) + (out + 8) * s);
      return [
        { lines, x, y: y + 4 * s, anchor: outer },
        { lines, x: mx, y: my + 4 * s, anchor: "middle" },
        { lines, x: ix, y: iy + 4 * s, anchor: "middle" },
      ];
    }),
  );
}

function extremeLabels(answer: Answer, frame: PolarFrame, byNumber: boolean, board: LabelBoard): Mark[] {
  const { s } = frame;
  const halo = { role: "paper", width: 3 * s } as const;
  const { gains } = cutOf(answer, "azimuthPattern");
  const most = Math.max(...gains);
  const bearing = (azimuth: number) => `${fixedText(Math.round(azimuth) % 360, 0)}°`;
  const lobes = lobesTold(answer);
  const low = isRound(gains) ? [] : minimaAround(answer);
  const strong = { role: "fieldInk", size: 13 * s, weight: 600, halo } as const;
  const beside = () =>
    lobes.flatMap((one) =>
      board.place(
        strong,
        [[`${bearing(one.azimuth)}, ${gainText(one.gain)}`], [bearing(one.azimuth)]].flatMap((lines) =>
          labelPlaces(frame, one.azimuth, lines, one.gain),
        ),
      ),
    );
  return [
    ...(byNumber
      ? tipNumbers(
          frame,
          lobes.map((one) => ({ angle: compassAngle(one.azimuth), gain: one.gain })),
          board,
        )
      : beside()),
    ...low.slice(0, low.length > mostLabels ? 0 : mostLabels).flatMap((one) => {
      const word = isNull(one.gain, most) ? "null" : "least";
      const text = `${word} ${bearing(one.azimuth)}`;
      return board.placeClear({ role: "ink2", size: 12 * s, halo }, labelPlaces(frame, one.azimuth, [text], one.gain));
    }),
  ];
}

/** Figure of the answer to `sky`. */
export function azimuthPattern(answer: Answer, options: PatternOptions): Figure {
  const { width, scale: s = 1 } = options;
  const cut = cutOf(answer, "azimuthPattern");
  const side = width < 360 * s ? 46 * s : 110 * s;
  const radius = Math.min((width - 2 * side) / 2, 170 * s);
  const dashed = cut.dipole ? " Dashed: a half-wave dipole as high as the antenna's top." : "";
  const byNumber = tellsByNumber(width, s, lobesAround(answer).length);
  const note = `Gain ${upwardsText(elevationOfCut(answer))}, by compass, north up.${dashed}`;
  const notes = [
    ...(byNumber ? numberedLines(lobeWords(answer), width, s) : []),
    ...wrapText(note, 12 * s, width - 8 * s),
  ];
  const cy = radius + 40 * s;
  const height = cy + radius + 44 * s + notes.length * 16 * s;
  const top = topRing(Math.max(...cut.gains, ...(cut.dipole ?? [])));
  const frame = polarFrame({ cx: width / 2, cy, radius, s }, top);
  const board = createLabelBoard(width, height);
  const angles = cut.angles.map(compassAngle);
  const outline = outlineOf(frame, angles, cut.gains);
  boxesAlong(outline, 1.5 * s).forEach(board.avoidFirmly);
  if (cut.dipole) boxesAlong(outlineOf(frame, angles, cut.dipole), 1.5 * s).forEach(board.avoid);
  const texts = notes.flatMap((line, i) =>
    board.place({ role: "ink2", size: 12 * s }, [
      { lines: [line], x: 4 * s, y: height - (notes.length - 1 - i) * 16 * s - 6 * s },
    ]),
  );
  const labels = [
    ...texts,
    ...compassLabels(frame, board),
    ...ringLabels(frame, 60, [0, -3 * s], board),
    ...extremeLabels(answer, frame, byNumber, board),
  ];
  const tips = lobesAround(answer).map((one) =>
    tipMark(frame.at(compassAngle(one.azimuth), frame.radiusOf(one.gain)), s),
  );
  return {
    name: "azimuthPattern",
    title: titleOf(answer),
    width,
    height,
    scale: s,
    marks: [
      ...frameMarks(frame, 360),
      ...patternMarks(frame, outline),
      ...(cut.dipole ? referenceMarks(frame, outlineOf(frame, angles, cut.dipole)) : []),
      ...tips,
      ...labels,
    ],
    description: describe(answer),
    table: tableOf(answer),
  };
}

function describe(answer: Answer): string {
  const list = (found: readonly Extreme[]) =>
    found.map((one) => `${bearingText(one.azimuth)}, ${gainText(one.gain)}`).join("; ");
  const lobes = list(lobesAround(answer));
  const low = list(minimaAround(answer));
  const up = upwardsText(elevationOfCut(answer));
  if (lobes === "") return `Gain by compass ${up}: the same all round.`;
  return `Gain by compass ${up}, in dBi by radius. Lobes: ${lobes}. Weakest: ${low || "nowhere clearly"}.`;
}

const every = 5;

function tableOf(answer: Answer): FigureTable {
  const cut = cutOf(answer, "azimuthPattern");
  const columns = [
    { name: "azimuth", unit: "°" },
    { name: "gain", unit: "dBi" },
    ...(cut.dipole ? [{ name: "gain of a dipole as high", unit: "dBi" }] : []),
  ];
  const rows = cut.angles.flatMap((angle, i) =>
    i % every === 0 ? [[angle, cut.gains[i]!, ...(cut.dipole ? [cut.dipole[i]!] : [])]] : [],
  );
  return { caption: `Gain around, ${upwardsText(elevationOfCut(answer))}`, columns, rows };
}
