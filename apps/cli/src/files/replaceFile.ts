import { existsSync, realpathSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { wrongCommand } from "../tell/commandProblem";
import { fromCaller } from "./callerFolder";

const fault = (name: string, message: string): Error =>
  wrongCommand({ place: name, found: name, expected: "a file that can be written", message });

/** Says before a long computation that its result could not be kept. */
export function checkPlaceForFile(name: string): void {
  const file = fromCaller(name);
  const folder = dirname(file);
  if (!existsSync(folder) || !statSync(folder).isDirectory()) {
    throw fault(name, `"${name}" cannot be written: there is no folder "${dirname(name)}". Make it first.`);
  }
  if (existsSync(file) && statSync(file).isDirectory()) {
    throw fault(name, `"${name}" is a folder. Name a file in it, such as "${join(name, "answer.html")}".`);
  }
}

function writeBeside(file: string, text: string | Uint8Array, mode: number | undefined): void {
  const unfinished = join(dirname(file), `.${basename(file)}.${process.pid}.unfinished`);
  try {
    writeFileSync(unfinished, text, { flag: "wx", ...(mode === undefined ? {} : { mode }) });
    renameSync(unfinished, file);
  } catch (error) {
    rmSync(unfinished, { force: true });
    throw error;
  }
}

/** Writes a file so that a reader sees the old content or the whole new one, never a part: beside it first, then renamed. */
export function replaceFile(name: string, text: string | Uint8Array): void {
  const given = fromCaller(name);
  try {
    const file = existsSync(given) ? realpathSync(given) : given;
    const old = existsSync(file) ? statSync(file) : null;
    // A device or a pipe has no old content to keep, and renaming over it would remove it.
    if (old && !old.isFile()) writeFileSync(file, text);
    else writeBeside(file, text, old?.mode);
  } catch (error) {
    throw fault(name, `"${name}" cannot be written: ${error instanceof Error ? error.message : String(error)}.`);
  }
}
