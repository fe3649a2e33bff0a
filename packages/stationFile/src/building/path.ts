/** The path with its parts named, and its end. */
import type { Part, Path, PathEnd, Quantity } from "@feedpath/engine";
import type { Key, KeyPath } from "../reading/sourceText";
import type { FilePart } from "../schema/parts";
import type { FileEnd, FileStep } from "../schema/path";
import { someOf } from "../units/nearest";
import { type Build, fault, fill, fillQuantity } from "./build";
import { buildPart, kindOfPart } from "./parts";

export interface PathBuild {
  readonly build: Build;
  /** Names the file gives, so that a counted name never repeats one. */
  readonly given: ReadonlySet<string>;
  readonly counts: Map<string, number>;
  /** Feeds of all antennas in the order of the file. */
  readonly feeds: readonly string[];
  /** Where each named thing of the path stands in the file. */
  readonly names: { readonly name: string; readonly path: KeyPath }[];
}

const endKeys = ["feed", "load", "switch", "tee", "band splitter"] as const;

const isEnd = (step: FileStep): step is FileEnd => endKeys.some((key) => Object.hasOwn(step, key));

export function buildPath(of: PathBuild, steps: readonly FileStep[], path: KeyPath, place: string): Path {
  const parts: Part[] = [];
  let end: PathEnd | null = null;
  steps.forEach((step, index) => {
    const here = [...path, index];
    if (!isEnd(step)) parts.push(partOf(of, step, here, `${place}.parts.${parts.length}`));
    else if (index === steps.length - 1) end = endOf(of, step, here, `${place}.end`);
    else {
      const key = endKeys.find((known) => Object.hasOwn(step, known)) ?? "feed";
      of.build.report(
        [...here, key],
        "key",
        fault(`"${key}" ends a path: nothing can follow it in the same list.`, "the last entry"),
      );
    }
  });
  return { parts, end: end ?? openEnd(of, path) };
}

/** A path without an end stops at the feed point where there is only one. */
function openEnd(of: PathBuild, path: KeyPath): PathEnd {
  const [feed = "antenna", ...more] = of.feeds;
  if (more.length > 0) {
    const message = `This path does not say where it ends; the feeds are ${someOf(of.feeds)}. End it with { feed: ${feed} }, a switch or a tee.`;
    of.build.report(path, "key", fault(message, `{ feed: ${feed} } as the last entry`));
  }
  return { kind: "feed", feed };
}

/** Names a part: as given, or by kind and count. */
function nameOf(of: PathBuild, kind: string, given: string | undefined, path: KeyPath, key: Key): string {
  if (given !== undefined) {
    of.names.push({ name: given, path: [...path, key] });
    return given;
  }
  let count = of.counts.get(kind) ?? 0;
  do count++;
  while (of.given.has(`${kind} ${count}`));
  of.counts.set(kind, count);
  of.names.push({ name: `${kind} ${count}`, path });
  return `${kind} ${count}`;
}

function partOf(of: PathBuild, part: FilePart, path: KeyPath, place: string): Part {
  const kind = kindOfPart(part);
  const given = givenName(part);
  return buildPart(
    { build: of.build, path, place, name: nameOf(of, kind, given?.name, path, given?.key ?? "name") },
    part,
  );
}

/** The name an entry of the path gives itself, and the key that holds it. */
export function givenName(step: FileStep): { readonly name: string; readonly key: Key } | null {
  if ("meter" in step) return { name: step.meter, key: "meter" };
  if ("two-port" in step) return { name: step["two-port"], key: "two-port" };
  if ("switch" in step) return { name: step.switch, key: "switch" };
  if ("tee" in step) return { name: step.tee, key: "tee" };
  if ("band splitter" in step) return { name: step["band splitter"], key: "band splitter" };
  return "name" in step && step.name !== undefined ? { name: step.name, key: "name" } : null;
}

/** All names given in a path, branches included. */
export function givenNames(steps: readonly FileStep[]): readonly string[] {
  return steps.flatMap((step) => {
    const given = givenName(step);
    const branches = "positions" in step ? step.positions : "branches" in step ? step.branches : {};
    return [...(given ? [given.name] : []), ...Object.values(branches).flatMap(givenNames)];
  });
}

function endOf(of: PathBuild, end: FileEnd, path: KeyPath, place: string): PathEnd {
  if ("feed" in end) return { kind: "feed", feed: end.feed };
  if ("load" in end) return { kind: "load", resistance: end.load };
  const given = givenName(end);
  const name = nameOf(of, "end", given?.name, path, given?.key ?? "name");
  if ("switch" in end) return switchOf(of, end, name, path, place);
  const branches = branchesOf(of, end.branches, [...path, "branches"], `${place}.branches`);
  if ("tee" in end) return { kind: "tee", name, branches };
  for (const branch of new Set([...Object.keys(end.branches), ...Object.keys(end.passes)])) {
    if (Object.hasOwn(end.passes, branch) && Object.hasOwn(end.branches, branch)) continue;
    const message = `The branch "${branch}" of ${name} needs both a path in branches and a span in passes.`;
    const key = Object.hasOwn(end.passes, branch) ? "passes" : "branches";
    of.build.report([...path, key, branch], "key", fault(message, "the same names in branches and passes"));
  }
  return { kind: "band splitter", name, branches, passes: end.passes, loss: endLoss(of.build, end.loss, name, place) };
}

const endLoss = (build: Build, loss: Quantity | undefined, name: string, place: string): Quantity =>
  fillQuantity(build, loss, "decibels", {
    place: `${place}.loss`,
    name: `loss of ${name}`,
    value: 0,
    reason: "not given: taken as none",
  });

function branchesOf(
  of: PathBuild,
  branches: Readonly<Record<string, readonly FileStep[]>>,
  path: KeyPath,
  place: string,
) {
  const names = Object.keys(branches);
  if (names.length === 0) of.build.report(path, "key", fault("At least one branch is needed here.", "NAME: [parts]"));
  return Object.fromEntries(
    names.map((name) => [name, buildPath(of, branches[name] ?? [], [...path, name], `${place}.${name}`)]),
  );
}

function switchOf(
  of: PathBuild,
  end: Extract<FileEnd, { switch: string }>,
  name: string,
  path: KeyPath,
  place: string,
): PathEnd {
  const positions = branchesOf(of, end.positions, [...path, "positions"], `${place}.positions`);
  const [first = ""] = Object.keys(positions);
  const now = fill<string>(of.build, end.now, {
    place: `${place}.now`,
    name: `position of ${name}`,
    value: first,
    says: first,
    reason: "not given: the first position, unless a band sets another",
  });
  const idle = fill<"open" | "shorted" | Quantity>(of.build, end.idle, {
    place: `${place}.idle`,
    name: `idle side of ${name}`,
    value: "open",
    says: "open",
    reason: "not given",
  });
  const loss = endLoss(of.build, end.loss, name, place);
  return { kind: "switch", name, positions, idle, now, loss, isolation: end.isolation ?? null };
}
