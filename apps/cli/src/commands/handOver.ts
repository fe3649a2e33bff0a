import { basename, extname } from "node:path";
import type { Answer } from "@feedpath/engine";
import { figuresOf, toSvg } from "@feedpath/figures";
import { answerSheet, sheetFigureSizes } from "@feedpath/report";
import { replaceFile } from "../files/replaceFile";
import { wrongCommand } from "../tell/commandProblem";
import type { Terminal } from "../tell/terminal";

/** Width of a picture on its own, px (docs/look.md). */
const pictureWidth = 1112;

/** Writes the answer as one self-contained page. */
export function writeSheet(file: string, answer: Answer, stationText: string, terminal: Terminal): void {
  const figures = figuresOf(answer, sheetFigureSizes.paper);
  const narrowFigures = figuresOf(answer, sheetFigureSizes.phone);
  replaceFile(file, answerSheet({ answer, figures, narrowFigures, stationText }));
  terminal.remark(`Wrote the answer to ${file}.`);
}

/** "swr-across-band" and "swrAcrossBand" are one name. */
const folded = (name: string): string => name.toLowerCase().replace(/[^a-z0-9]/g, "");

/** Writes figures: each file gets the figure that bears its name, else the first one, and the remark says which. */
export function writeFigures(files: readonly string[], answer: Answer, terminal: Terminal): void {
  if (files.length === 0) return;
  const figures = figuresOf(answer, { width: pictureWidth });
  const names = figures.map(({ name }) => name).join(", ");
  for (const file of files) {
    const wanted = folded(basename(file, extname(file)));
    const figure = figures.find(({ name }) => folded(name) === wanted) ?? figures[0];
    if (!figure) {
      const message = "This answer has no figures.";
      throw wrongCommand({ place: "--figure", found: file, expected: "nothing", message });
    }
    replaceFile(file, toSvg(figure, { theme: "light", idPrefix: "figure", standalone: true }));
    terminal.remark(`Wrote the figure "${figure.name}" to ${file} (this answer has ${names}).`);
  }
}
