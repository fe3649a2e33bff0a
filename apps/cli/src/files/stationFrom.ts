import type { Station } from "@feedpath/engine";
import { decodeStationBytes, readStation } from "@feedpath/station-file";
import { ProblemsFound } from "../tell/problemsFound";
import { readBytes } from "./readBytes";
import { referencedFiles } from "./referencedFiles";

export interface StationRead {
  /** As the file has it. */
  readonly text: string;
  readonly station: Station;
  /** Canonical text, the same however the file is laid out. */
  readonly normalised: string;
}

/** Reads a station file named on the command line, with the files it names. Throws ProblemsFound with all its problems. */
export async function stationFrom(name: string): Promise<StationRead> {
  const fileName = name === "-" ? "standard input" : name;
  const decoded = decodeStationBytes(await readBytes(name), fileName);
  if (decoded.problems.length > 0) throw new ProblemsFound(decoded.problems);
  const { station, problems, normalised } = readStation(decoded.text, { fileName, readFile: referencedFiles(name) });
  if (station === null) throw new ProblemsFound(problems);
  return { text: decoded.text, station, normalised };
}
