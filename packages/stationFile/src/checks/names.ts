/** Names are unique in the file; "transmitter" and "feed point" are joints. */

import { fault } from "../building/build";
import type { KeyPath } from "../reading/sourceText";
import { shown } from "../units/nearest";
import type { Checked } from "./checked";

interface Named {
  readonly name: string;
  readonly path: KeyPath;
  readonly at: "key" | "value";
}

const reserved = ["transmitter", "feed point", "floating", "radials", "outside of the line"];

/** Everything in the file that bears a name, with its place. */
export function namedThings(checked: Checked): readonly Named[] {
  const { file, antennas, partNames } = checked;
  const keys = (path: KeyPath, map: Readonly<Record<string, unknown>> | undefined): Named[] =>
    Object.keys(map ?? {}).map((name) => ({ name, path: [...path, name], at: "key" }));
  const parts = partNames.map(({ name, path }): Named => ({ name, path, at: "value" }));
  const conductors = (file.surroundings ?? []).flatMap((thing, index): Named[] => {
    if ("conductor" in thing)
      return [{ name: thing.conductor, path: ["surroundings", index, "conductor"], at: "value" }];
    return "sheet" in thing ? [{ name: thing.sheet, path: ["surroundings", index, "sheet"], at: "value" }] : [];
  });
  const wires = antennas.flatMap(({ path, written }): Named[] => {
    if ("wires" in written) {
      return written.wires.map(
        (wire, index): Named => ({ name: wire.name, path: [...path, "wires", index, "name"], at: "value" }),
      );
    }
    return "elements" in written ? keys([...path, "elements"], written.elements) : [];
  });
  const feeds = antennas.flatMap(({ path, written }) => keys([...path, "feeds"], written.feeds));
  return [
    ...parts,
    ...keys(["antennas"], file.antennas),
    ...wires,
    ...feeds,
    ...keys(["earths"], file.earths),
    ...conductors,
  ];
}

export function checkNames(checked: Checked): void {
  const seen = new Set<string>();
  for (const { name, path, at } of namedThings(checked)) {
    if (seen.has(name)) {
      checked.build.report(
        path,
        at,
        fault(`The name "${shown(name)}" is given twice. Names are unique in a file.`, "another name"),
      );
    }
    if (reserved.includes(name)) {
      checked.build.report(
        path,
        at,
        fault(`"${name}" has a meaning of its own in a station file. Choose another name.`, "another name"),
      );
    }
    seen.add(name);
  }
}
