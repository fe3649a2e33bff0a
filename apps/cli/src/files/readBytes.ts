import { closeSync, fstatSync, openSync, readSync } from "node:fs";
import { wrongCommand } from "../tell/commandProblem";
import { fromCaller } from "./callerFolder";

/** Largest station file read, bytes; a station of some pages has a hundredth of it. */
const largest = 2 * 1024 * 1024;

const fault = (name: string, found: string, message: string): Error =>
  wrongCommand({ place: name, found, expected: "a station file", message });

const isSystemError = (error: unknown): error is NodeJS.ErrnoException => error instanceof Error && "code" in error;

function explain(name: string, error: NodeJS.ErrnoException): Error {
  const reasons: Record<string, string> = {
    ENOENT: `There is no file "${name}". Look at the name, or start a new one with: feedpath begin ${name}`,
    EACCES: `"${name}" may not be read: its permissions forbid it.`,
    EISDIR: `"${name}" is a folder. Name the station file inside it.`,
  };
  return fault(name, error.code ?? "", reasons[error.code ?? ""] ?? `"${name}" cannot be read: ${error.message}.`);
}

/** Reads no more than the limit, so that an endless device or a huge file costs nothing. */
function readAtMost(name: string, file: number): Buffer {
  const buffer = Buffer.alloc(largest + 1);
  let length = 0;
  while (length <= largest) {
    const count = readSync(file, buffer, length, buffer.length - length, null);
    if (count === 0) return buffer.subarray(0, length);
    length += count;
  }
  throw fault(name, "a larger file", `"${name}" is larger than ${largest / 1024 / 1024} MB, which no station file is.`);
}

function readFile(name: string): Buffer {
  let file: number | null = null;
  try {
    file = openSync(fromCaller(name), "r");
    if (fstatSync(file).isDirectory()) throw Object.assign(new Error("is a folder"), { code: "EISDIR" });
    return readAtMost(name, file);
  } catch (error) {
    throw isSystemError(error) ? explain(name, error) : error;
  } finally {
    if (file !== null) closeSync(file);
  }
}

async function readStandardInput(): Promise<Buffer> {
  const chunks: Buffer[] = [];
  let length = 0;
  for await (const chunk of process.stdin) {
    chunks.push(chunk);
    length += chunk.length;
    if (length > largest) throw fault("-", "a larger file", "Standard input holds more than any station file does.");
  }
  return Buffer.concat(chunks);
}

/** Bytes of a station file named on the command line; "-" reads standard input. */
export async function readBytes(name: string): Promise<Buffer> {
  return name === "-" ? readStandardInput() : readFile(name);
}
