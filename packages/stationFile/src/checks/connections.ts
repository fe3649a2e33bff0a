/** Feeds are reached once; bands set only what exists; switches know their positions. */
import type { Path, PathEnd } from "@feedpath/engine";
import { fault, list } from "../building/build";
import type { KeyPath } from "../reading/sourceText";
import { nearestWord, orList, shown } from "../units/nearest";
import type { Checked } from "./checked";
import { allParts, checkName } from "./references";

interface PlacedEnd {
  readonly end: PathEnd;
  readonly path: KeyPath;
}

/** Every end of the path and its branches, with the place of its entry (or of its list, where the end is left out). */
function allEnds(path: Path, steps: readonly unknown[], at: KeyPath): readonly PlacedEnd[] {
  const { end } = path;
  const here: KeyPath = steps.length > path.parts.length ? [...at, steps.length - 1] : at;
  const key = end.kind === "switch" ? "positions" : "branches";
  const branches = end.kind === "switch" ? end.positions : "branches" in end ? end.branches : {};
  const last = steps.at(-1) as Readonly<Record<string, Readonly<Record<string, readonly unknown[]>>>> | undefined;
  const inner = Object.entries(branches).flatMap(([name, branch]) =>
    allEnds(branch, last?.[key]?.[name] ?? [], [...here, key, name]),
  );
  return [{ end, path: here }, ...inner];
}

export function checkConnections(checked: Checked): void {
  const { station, file, feeds, build } = checked;
  const reached = new Set<string>();
  for (const { end, path } of allEnds(station.path, file.path, ["path"])) {
    if (end.kind === "switch") checkSwitch(checked, end, path);
    if (end.kind !== "feed") continue;
    const written = typeof path.at(-1) === "number";
    if (written) checkName(checked, end.feed, feeds, "No feed", [...path, "feed"]);
    if (reached.has(end.feed)) {
      const message = `The feed "${shown(end.feed)}" is reached twice. Join branches with a tee before it.`;
      build.report(written ? [...path, "feed"] : path, written ? "value" : "key", fault(message, "each feed once"));
    }
    reached.add(end.feed);
  }
  const joined = new Set(
    station.antennas.flatMap(({ joined = [] }) =>
      joined.flatMap(({ from, farEnd }) => (typeof farEnd === "string" ? [] : [from, farEnd.feed])),
    ),
  );
  for (const feed of feeds) {
    if (reached.has(feed) || joined.has(feed)) continue;
    list(build, "path", `feed ${feed}`, "not connected", "no path leads to it: it is left open");
  }
}

function checkSwitch(checked: Checked, end: Extract<PathEnd, { kind: "switch" }>, path: KeyPath): void {
  const positions = Object.keys(end.positions);
  checkName(checked, end.now, positions, `No position of ${end.name}`, [...path, "now"]);
}

/** `set` of every band: a switch to one of its positions, a tuner or another part to a state. */
export function checkSets(checked: Checked): void {
  const { file, station } = checked;
  const parts = allParts(station.path);
  const switches = allEnds(station.path, file.path, ["path"]).flatMap(({ end }) =>
    end.kind === "switch" ? [end] : [],
  );
  const known = [...switches.map((end) => end.name), ...parts.map((part) => part.name)];
  for (const [band, { set }] of Object.entries(file.bands ?? {})) {
    for (const [name, state] of Object.entries(set ?? {})) {
      const path = ["bands", band, "set", name];
      checkName(checked, name, known, "No part", path, "key");
      const thrown = switches.find((end) => end.name === name);
      const part = parts.find((one) => one.name === name);
      if (thrown) checkName(checked, state, Object.keys(thrown.positions), `No position of ${name}`, path);
      else if (part)
        checkState(
          checked,
          state,
          part.kind === "tuner" ? ["in line", "bypassed", "least loss"] : ["in line", "bypassed"],
          path,
        );
    }
  }
}

function checkState(checked: Checked, state: string, states: readonly string[], path: KeyPath): void {
  if (states.includes(state)) return;
  const near = nearestWord(state, states);
  const hint = near === null ? `Expected: ${orList(states)}.` : `Nearest: ${near}.`;
  checked.build.report(
    path,
    "value",
    fault(`"${shown(state)}" is no state of this part. ${hint}`, orList(states), { nearest: near, mend: near }),
  );
}
