import { readFileSync, realpathSync, statSync } from "node:fs";
import { dirname, isAbsolute, join, relative, sep } from "node:path";
import { callerFolder, fromCaller } from "./callerFolder";

/** Largest measurement read, bytes: a sweep of 100,000 points. */
const largest = 16 * 1024 * 1024;

const liesBelow = (folder: string, file: string): boolean => {
  const way = relative(folder, file);
  return way !== "" && way !== ".." && !way.startsWith(`..${sep}`) && !isAbsolute(way);
};

/**
 * Reads the files a station file names. A station file may come from a stranger, so only plain files below its own folder
 * are read; links are followed first and the place they lead to decides. Null: not there, not allowed, or too large.
 */
export function referencedFiles(stationFile: string): (name: string) => string | null {
  const folder = stationFile === "-" ? callerFolder() : dirname(fromCaller(stationFile));
  return (name) => {
    try {
      const file = realpathSync(join(folder, name));
      const facts = statSync(file);
      if (isAbsolute(name) || !liesBelow(realpathSync(folder), file)) return null;
      return facts.isFile() && facts.size <= largest ? readFileSync(file, "utf8") : null;
    } catch {
      return null;
    }
  };
}
