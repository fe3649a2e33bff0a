/** Whatever refers to a name finds it: earths, what an antenna works against, readings, what may change. */
import type { Part, Path } from "@feedpath/engine";
import { fault } from "../building/build";
import type { KeyPath } from "../reading/sourceText";
import { nearestWord, shown, someOf } from "../units/nearest";
import type { Checked } from "./checked";
import { namedThings } from "./names";

/** Tells an unknown name with the nearest known one. `what` begins the sentence: "No earth". */
export function checkName(
  checked: Checked,
  name: string,
  known: readonly string[],
  what: string,
  path: KeyPath,
  at: "key" | "value" = "value",
): void {
  if (known.includes(name)) return;
  const near = nearestWord(name, known);
  const hint =
    near !== null ? `Nearest: ${near}.` : known.length > 0 ? `Known: ${someOf(known)}.` : "None is given in the file.";
  const expected = known.length > 0 ? someOf(known) : "a name given in the file";
  checked.build.report(
    path,
    at,
    fault(`${what} is called "${shown(name)}". ${hint}`, expected, { nearest: near, mend: near }),
  );
}

export function checkEarths(checked: Checked): void {
  const { file, station } = checked;
  const earths = station.earths.map((earth) => earth.name);
  if (file.transmitter.earthed !== undefined) {
    checkName(checked, file.transmitter.earthed, [...earths, "floating"], "No earth", ["transmitter", "earthed"]);
  }
  for (const { part, path } of partsWithPlaces(checked)) {
    if (part.kind === "bond") checkName(checked, part.earth, earths, "No earth", [...path, "bond"]);
    if (part.kind === "arrestor" && part.earth !== null)
      checkName(checked, part.earth, earths, "No earth", [...path, "earth"]);
  }
  for (const { path, written } of checked.antennas) {
    if (written.radials?.bond !== undefined) {
      checkName(checked, written.radials.bond, earths, "No earth", [...path, "radials", "bond"]);
    }
  }
}

/** All parts of a path, branches included, in the order of the file. */
export function allParts(path: Path): readonly Part[] {
  const { end } = path;
  const branches = end.kind === "switch" ? end.positions : "branches" in end ? end.branches : {};
  return [...path.parts, ...Object.values(branches).flatMap(allParts)];
}

/** Parts with their places in the file: names tell which is which. */
export function partsWithPlaces({
  station,
  partNames,
}: Checked): readonly { readonly part: Part; readonly path: KeyPath }[] {
  const paths = new Map(partNames.map(({ name, path }) => [name, path]));
  return allParts(station.path).flatMap((part) => {
    const path = paths.get(part.name);
    return path ? [{ part, path: entryPath(path) }] : [];
  });
}

/** The entry of a part: its name's place ends in a key, an unnamed part's in its index. */
const entryPath = (path: KeyPath): KeyPath => (typeof path.at(-1) === "number" ? path : path.slice(0, -1));

export function checkReadings(checked: Checked): void {
  const { station, partNames, feeds } = checked;
  const points =
    feeds.length === 1 ? ["feed point", `feed point ${feeds[0]}`] : feeds.map((feed) => `feed point ${feed}`);
  const joints = ["transmitter", ...partNames.map(({ name }) => `after ${name}`), ...points];
  const meters = allParts(station.path).filter((part) => part.kind === "meter");
  const known = [...meters.map((part) => part.name), ...joints];
  station.readings.forEach((reading, index) => {
    checkName(checked, reading.at, known, "No meter or joint", ["readings", index, "at"]);
  });
}

/** `may change` names a part, an antenna, or a key that stands in the file. */
export function checkMayChange(checked: Checked): void {
  const keys = new Set<string>();
  collectKeys(checked.file, keys);
  const known = [...new Set([...namedThings(checked).map(({ name }) => name), ...keys])];
  (checked.file.wanted?.["may change"] ?? []).forEach((name, index) => {
    checkName(checked, name, known, "No part and no key of this file", ["wanted", "may change", index]);
  });
}

function collectKeys(thing: unknown, keys: Set<string>): void {
  if (Array.isArray(thing)) for (const item of thing) collectKeys(item, keys);
  else if (typeof thing === "object" && thing !== null && !("basis" in thing)) {
    for (const [key, value] of Object.entries(thing)) {
      keys.add(key);
      collectKeys(value, keys);
    }
  }
}
