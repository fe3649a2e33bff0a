/** Feeds that are nowhere, or have nothing on one side. */
import { distanceBetween, wireEnd } from "./geometry";
import { sameplace } from "./junctions";
import type { FeedGap, Soil, Structure } from "./structure";

export function feedProblems(structure: Structure, soil: Soil): string[] {
  if (structure.feeds.length === 0) return ["the structure has no feed"];
  const problems = structure.feeds.flatMap((feed) => feedProblem(structure, soil, feed));
  structure.feeds.forEach((feed, i) => {
    const twin = structure.feeds.findIndex((other) => distanceBetween(feed.at, other.at) <= sameplace);
    if (twin < i) problems.push(`feeds "${structure.feeds[twin]!.name}" and "${feed.name}" are at one point`);
  });
  return problems;
}

function feedProblem(structure: Structure, soil: Soil, feed: FeedGap): string[] {
  const name = `feed "${feed.name}"`;
  const endsHere = structure.wires.flatMap((wire, index) =>
    ([0, 1] as const).filter((end) => distanceBetween(wireEnd(wire, end), feed.at) <= sameplace).map(() => index),
  );
  const missing = [...feed.from, ...feed.into].filter((wire) => !endsHere.includes(wire));
  if (missing.length > 0) return [`${name}: wire number ${missing[0]} has no end at the feed`];
  if (feed.from.some((wire) => feed.into.includes(wire))) return [`${name}: a wire is on both sides of the gap`];
  const grounded = (structure.contacts ?? []).some((c) => distanceBetween(c.at, feed.at) <= sameplace);
  if (endsHere.every((wire) => feed.from.includes(wire)) && !grounded)
    return [`${name}: no wire on the side it feeds into`];
  const onPlane = soil.kind === "perfect" && Math.abs(feed.at[2]) <= sameplace;
  if (onPlane && feed.from.length > 0 && !grounded)
    return [`${name}: on a perfect plane the plane is the side it feeds from`];
  if (!onPlane && feed.from.length === 0 && !grounded) return [`${name}: no wire on the side it feeds from`];
  return [];
}
