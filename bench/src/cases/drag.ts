/** What follows the hand: the antenna changed, or only the line. Warm, every change a new one. */
import { chooseKernels, createSolutionMemory, type SolutionMemory, type Structure } from "@feedpath/engine";
import { fastKernels } from "@feedpath/fast-kernels";
import { stage } from "@feedpath/figures";
import { dipole, fresh, leg, mast, refinementFor, solvePoint } from "../antennas";
import { type Budget, type Section, threeDigits } from "../report/section";
import { answerTo, exampleText, plain, stationOf } from "../stations";
import { type Case, here, interleaved, ratioTo, timingNamed } from "../timing/interleaved";
import { timingTable } from "../timing/timingTable";
import { textbookCase, textbookName } from "./solves";

const name = "harbour-school-club";
const text = exampleText(name);
const frame = 16;
const twoFrames = 33;

/** The file with the first value of that key in metres replaced by another, never the same twice. */
function dragged(key: "height" | "length"): string {
  const pattern = new RegExp(`(${key}: )(\\d+(?:\\.\\d+)?)( m)`);
  const found = pattern.exec(text);
  if (!found) throw new Error(`${name} has no ${key} in metres`);
  return text.replace(pattern, `$1${fresh(Number(found[2]))}$3`);
}

/** Impedance, watts of every part, section and ribbon as the page draws them; without what uncertain values do. */
function redraw(file: string, known: boolean, kept?: SolutionMemory): void {
  const station = stationOf(file, name);
  stage(answerTo(known ? station : plain(station), "watts", kept), { width: 900 });
}

interface Dragged {
  readonly what: string;
  /** ms; null where no budget is set. */
  readonly limit: number | null;
  readonly work: () => void;
}

function solved(what: string, limit: number, refinement: number, structure: () => Structure): Dragged {
  return { what, limit, work: () => void solvePoint(structure(), fastKernels, refinement) };
}

function draggedCases(): readonly Dragged[] {
  const [one, many] = [refinementFor(dipole(12), 91), refinementFor(mast(4), 180)];
  const unknowns = (structure: Structure, refinement: number): string =>
    `${solvePoint(structure, fastKernels, refinement).solution.unknowns} unknowns`;
  const [few, more] = [unknowns(dipole(12), one), unknowns(mast(4), many)];
  const memory = createSolutionMemory();
  for (const known of [false, true]) redraw(text, known, memory);
  return [
    solved(`height of a dipole changed, ${few}: impedance and gain`, frame, one, () => dipole(fresh(12))),
    solved(`length of a dipole changed, ${few}: impedance and gain`, frame, one, () => dipole(12, fresh(leg))),
    solved(`length of 4 radials changed, ${more}: impedance and gain`, twoFrames, many, () => mast(4, fresh(9))),
    {
      what: "height of the station's dipole changed: file read, whole answer of `watts`, section and ribbon drawn",
      limit: frame,
      work: () => redraw(dragged("height"), false, memory),
    },
    {
      what: "line of the station changed: file read, whole answer of `watts`, section and ribbon drawn",
      limit: frame,
      work: () => redraw(dragged("length"), false, memory),
    },
    {
      what: "the same for the height, with what uncertain values do",
      limit: null,
      work: () => redraw(dragged("height"), true, memory),
    },
    {
      what: "the same for the line, with what uncertain values do",
      limit: null,
      work: () => redraw(dragged("length"), true, memory),
    },
  ];
}

export async function drag(): Promise<Section> {
  chooseKernels(fastKernels);
  const all = draggedCases();
  const cases: Case[] = [textbookCase(100), ...all.map(({ what, work }) => here(what, work))];
  const timings = await interleaved(cases, 21, 8);
  const base = timingNamed(timings, textbookName(100));
  const budgets = all.flatMap(({ what, limit }): Budget[] => {
    if (limit === null) return [];
    const timing = timingNamed(timings, what);
    const against = `${threeDigits(ratioTo(timing, base))} times ${textbookName(100)}`;
    return [{ what, limit, unit: "ms", bound: "most", measured: timing.median, against }];
  });
  return {
    title: "Dragging",
    budgets,
    tables: [timingTable("After each change, warm, one thread", "change", timings, base)],
    figures: [],
    troubles: [],
  };
}
