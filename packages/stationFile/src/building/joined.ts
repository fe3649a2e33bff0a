/** Lines and networks between the feeds of an antenna, or across them. */
import type { Joined, JoinedFeed } from "@feedpath/engine";
import type { FileJoined } from "../schema/antenna";
import { fill } from "./build";
import { circuit } from "./components";
import { buildLine } from "./lineEntry";
import type { ShapeSpot } from "./shapes";
import { theAntenna } from "./spot";

export const buildJoined = (spot: ShapeSpot, written: readonly FileJoined[]): readonly Joined[] =>
  written.map((one, index) => {
    const name = `joined entry ${index + 1} of ${theAntenna(spot.name)}`;
    return joinedEntry({ ...spot, path: [...spot.path, index], place: `${spot.place}.joined.${index}`, name }, one);
  });

function joinedEntry(spot: ShapeSpot, one: FileJoined): Joined {
  const line = (key: "line" | "stub", value: Parameters<typeof buildLine>[1]) =>
    buildLine({ build: spot.build, path: [...spot.path, key], place: `${spot.place}.line`, name: spot.name }, value);
  if ("stub" in one) return { line: line("stub", one.stub), length: one.length, from: one.at, farEnd: one["far end"] };
  if ("across" in one) return { component: circuit(spot, one.across, "across"), from: one.at, farEnd: "across" };
  const farEnd = farFeed(spot, one);
  if ("series" in one) return { component: circuit(spot, one.series, "series"), from: one.from, farEnd };
  return { line: line("line", one.line), length: one.length, from: one.from, farEnd };
}

function farFeed(
  spot: ShapeSpot,
  { to, crossed }: { readonly to: string; readonly crossed?: "yes" | "no" | undefined },
): JoinedFeed {
  const turned = fill<"yes" | "no">(spot.build, crossed, {
    place: `${spot.place}.crossed`,
    name: `${spot.name}: crossed`,
    value: "no",
    says: "no",
    reason: "not given: first legs joined with first legs",
  });
  return { feed: to, crossed: turned === "yes" };
}
