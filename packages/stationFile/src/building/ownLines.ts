/** Lines that the file describes by name, and where the station stands. */
import type { LineEntry, Site } from "@feedpath/engine";
import { findLine } from "../catalogue/lines";
import type { FileStation } from "../schema/station";
import { shown } from "../units/nearest";
import { type Build, fault } from "./build";
import { describedLine, sameName } from "./lineEntry";

/** Own lines in the order of the file; they go into `build.lines`, where paths look for them first. */
export function buildLines(build: Build, lines: FileStation["lines"]): readonly LineEntry[] {
  for (const [name, line] of Object.entries(lines ?? {})) {
    const path = ["lines", name];
    const report = (message: string): void => build.report(path, "key", fault(message, "another name"));
    const known = findLine(name);
    if (build.lines.some((other) => sameName(other.designation, name)))
      report(`The line "${shown(name)}" is described twice. Names of lines are unique in a file.`);
    if (known && !("like" in line && sameName(line.like, name)))
      report(
        `"${known.designation}" is a line of the catalogue. Give this one another name, or add to that one: { like: ${known.designation}, price: ... }.`,
      );
    const spot = { build, path, place: `lines.${build.lines.length}`, name: `the line "${name}"` };
    build.lines.push(describedLine(spot, line, name.trim()));
  }
  return build.lines;
}

export const buildSite = (site: FileStation["site"]): Site | null =>
  site
    ? { altitude: site.altitude ?? null, airTemperature: site["air temperature"] ?? null, noise: site.noise ?? null }
    : null;
