import { mkdirSync, statSync } from "node:fs";
import { join } from "node:path";
import type { Answer } from "@feedpath/engine";
import { type FigureFilm, filmOf, toSvg } from "@feedpath/figures";
import { fromCaller } from "../files/callerFolder";
import { replaceFile } from "../files/replaceFile";
import { wrongCommand } from "../tell/commandProblem";
import type { Terminal } from "../tell/terminal";

/** Width of a film and of its frames, px. */
const filmWidth = 960;

function filmFor(option: string, answer: Answer, found: string): FigureFilm {
  const film = filmOf(answer);
  if (film) return film;
  const message = `The answer to "${answer.question}" has no film: nothing in it moves.`;
  throw wrongCommand({ place: option, found, expected: "nothing", message });
}

/** Writes the film as one SVG that moves by itself. */
export function writeFilm(file: string, answer: Answer, terminal: Terminal): void {
  const film = filmFor("--film", answer, file);
  replaceFile(file, film.svg({ width: filmWidth }));
  terminal.remark(`Wrote the film to ${file}: ${film.moments} moments. A browser plays it; a click starts it anew.`);
}

function makeFolder(folder: string): void {
  const fault = (says: string): Error =>
    wrongCommand({
      place: "--frames",
      found: folder,
      expected: "a folder that can be written to",
      message: `"${folder}" ${says}.`,
    });
  const place = fromCaller(folder);
  try {
    mkdirSync(place, { recursive: true });
  } catch (error) {
    throw fault(`cannot be made: ${error instanceof Error ? error.message : String(error)}`);
  }
  if (!statSync(place).isDirectory()) throw fault("is not a folder");
}

/** Writes every moment of the film as a numbered PNG, for programs that cut films. */
export async function writeFrames(folder: string, answer: Answer, terminal: Terminal): Promise<void> {
  const film = filmFor("--frames", answer, folder);
  makeFolder(folder);
  // Loaded for this alone: nothing else draws pixels, and help and answers start faster without it.
  const { default: sharp } = await import("sharp");
  const digits = String(film.moments).length;
  for (let moment = 0; moment < film.moments; moment++) {
    const svg = toSvg(film.frame(moment, { width: filmWidth }), {
      theme: "light",
      idPrefix: "frame",
      standalone: true,
    });
    const png = await sharp(Buffer.from(svg)).png().toBuffer();
    replaceFile(join(folder, `${answer.question}-${String(moment + 1).padStart(digits, "0")}.png`), png);
  }
  terminal.remark(`Wrote ${film.moments} pictures to ${folder}, numbered from 1.`);
}
