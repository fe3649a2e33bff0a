/** Feed lines listed and compared, beside the questions. Loaded with what is made after an answer. */
import type { Station } from "@feedpath/engine";
import { type Figure, lineLosses } from "@feedpath/figures";
import {
  compareLines,
  type LineConditions,
  type ListedLine,
  linesDocument,
  listLines,
  lossStudy,
  mostCurves,
  sheetFigureSizes,
  stationRun,
  toHtml,
  usualFrequencies,
  usualFrequency,
} from "@feedpath/report";
import {
  catalogueVersion,
  type DimensionName,
  lineCatalogue,
  parseQuantity,
  readStation,
} from "@feedpath/station-file";
import type { FromWorker, LinesAsked, ParameterProblem, ToWorker } from "./messages";

type Asked = Extract<ToWorker, { kind: "lines" | "linesPage" }>;

interface Looked {
  readonly conditions: LineConditions;
  readonly all: readonly ListedLine[];
  readonly chosen: readonly ListedLine[];
  readonly problems: readonly ParameterProblem[];
}

const limits = {
  at: { dimension: "frequency", least: 1e3, most: 1e11 },
  length: { dimension: "length", least: 0.01, most: 100_000 },
} as const satisfies Record<string, { dimension: DimensionName; least: number; most: number }>;

/** SI value of what was typed, or null with its problem; null where nothing was. */
function typed(name: keyof typeof limits, text: string, problems: ParameterProblem[]): number | null {
  if (text.trim() === "") return null;
  const { dimension, least, most } = limits[name];
  const read = parseQuantity(text, dimension, { least, most });
  if (read.ok && read.value.low === read.value.high) return read.value.value;
  problems.push({ name, message: read.ok ? `"${text}" is a range; here stands one value.` : read.fault.message });
  return null;
}

function chosenOf(all: readonly ListedLine[], { chosen }: LinesAsked, station: Station | null): ListedLine[] {
  const own = station && stationRun(station).line;
  const names = chosen ?? (own ? [own.line.designation] : []);
  return all.filter(({ entry }) => names.includes(entry.designation)).slice(0, mostCurves);
}

function look({ text, fileName, measured, lines }: Asked): Looked {
  const { station } = readStation(text, { fileName, readFile: (name) => measured[name] ?? null });
  const run = station && stationRun(station);
  const problems: ParameterProblem[] = [];
  const at = typed("at", lines.at, problems) ?? run?.at ?? usualFrequency;
  const length = typed("length", lines.length, problems) ?? run?.line?.length.value ?? null;
  const all = listLines(station, lineCatalogue);
  return { conditions: { at, length, frequencies: [] }, all, chosen: chosenOf(all, lines, station), problems };
}

function page({ conditions, all, chosen }: Looked, { units }: LinesAsked): string {
  const shown = chosen.length > 0 ? chosen : all;
  const study = chosen.length > 0 ? lossStudy(chosen, conditions, units) : null;
  const drawn = (size: { width: number; scale?: number }): Figure | null => study && lineLosses(study, size);
  return toHtml(
    linesDocument({
      comparison: compareLines(shown, { ...conditions, frequencies: usualFrequencies }),
      units,
      figure: drawn(sheetFigureSizes.paper),
      narrowFigure: drawn(sheetFigureSizes.phone),
      worked: `Worked out by Feedpath ${__FEEDPATH_VERSION__}, catalogue ${catalogueVersion}.`,
    }),
  );
}

/** The listing, or the page as a sheet. A station with problems has no lines of its own here. */
export function answerLines(asked: Asked): FromWorker {
  const looked = look(asked);
  const { run, lines } = asked;
  if (asked.kind === "linesPage") return { kind: "sheet", run, html: page(looked, lines) };
  const { conditions, all, chosen, problems } = looked;
  const study = chosen.length > 0 ? lossStudy(chosen, conditions, lines.units) : null;
  const comparison = compareLines(all, conditions);
  return {
    kind: "lines",
    run,
    lines: { comparison, chosen: chosen.map(({ entry }) => entry.designation), study, problems },
  };
}
