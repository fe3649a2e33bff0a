/** Touchstone files that a station refers to: read once each, held to the number of ports their place needs. */
import type { MeasuredNetwork, Path, Problem, Station } from "@feedpath/engine";
import { type Build, fault, list } from "../building/build";
import { allParts } from "../checks/references";
import { readTouchstone } from "../touchstone/readTouchstone";
import { shown } from "../units/nearest";
import type { KeyPath } from "./sourceText";

interface Reference {
  readonly file: string;
  readonly ports: 1 | 2;
  readonly path: KeyPath;
}

export interface MeasuredFiles {
  readonly measured: Station["measured"];
  /** Problems inside the referenced files, which bear their own file names. */
  readonly problems: readonly Problem[];
}

/** Most files one station may refer to. */
const mostFiles = 100;

/** `pathOf` gives the place in the file of a part by its name. */
export function measuredFiles(
  build: Build,
  station: Station,
  pathOf: (part: string) => KeyPath,
  readFile: ((relativePath: string) => string | null) | undefined,
): MeasuredFiles {
  const measured: Record<string, MeasuredNetwork | null> = {};
  const problems: Problem[] = [];
  const references = referencesOf(station.path, pathOf, station.readings);
  if (references.length > mostFiles) {
    build.report(
      [],
      "key",
      fault(`The station refers to ${references.length} files; at most ${mostFiles} are read.`, "fewer files"),
    );
    return { measured, problems };
  }
  for (const { file, ports, path } of references) {
    if (!Object.hasOwn(measured, file)) measured[file] = read(build, file, path, readFile, problems);
    const network = measured[file];
    if (!network || network.ports === ports) continue;
    const message = `"${shown(file)}" has ${network.ports === 1 ? "one port" : "two ports"}; ${ports === 1 ? "one port is" : "two ports are"} needed here.`;
    build.report(path, "value", fault(message, `a Touchstone file with ${ports === 1 ? "one port" : "two ports"}`));
  }
  return { measured, problems };
}

function read(
  build: Build,
  file: string,
  path: KeyPath,
  readFile: ((relativePath: string) => string | null) | undefined,
  problems: Problem[],
): MeasuredNetwork | null {
  if (!readFile) {
    list(build, "measured", `measured file ${file}`, "left out", "no folder to read files from was given");
    return null;
  }
  const text = readFile(file);
  if (text === null) {
    build.report(
      path,
      "value",
      fault(`There is no file "${shown(file)}" beside the station file.`, "a file below the station's own folder"),
    );
    return null;
  }
  const { network, problems: found } = readTouchstone(text, file);
  problems.push(...found);
  return network;
}

function referencesOf(
  path: Path,
  pathOf: (part: string) => KeyPath,
  readings: Station["readings"],
): readonly Reference[] {
  const parts = allParts(path).flatMap((part): Reference[] => {
    const file = part.kind === "two-port" || part.kind === "filter" ? part.file : null;
    return file === null ? [] : [{ file, ports: 2, path: [...pathOf(part.name), "file"] }];
  });
  const swept = readings.flatMap((reading, index): Reference[] =>
    reading.file === null ? [] : [{ file: reading.file, ports: 1, path: ["readings", index, "file"] }],
  );
  return [...parts, ...swept];
}
