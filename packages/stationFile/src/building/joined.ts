/** Lines between the feeds of an antenna, and stubs across them. */
import type { Joined } from "@feedpath/engine";
import type { FileJoined } from "../schema/antenna";
import { fill } from "./build";
import { buildLine } from "./lineEntry";
import type { ShapeSpot } from "./shapes";
import { theAntenna } from "./spot";

export function buildJoined(spot: ShapeSpot, written: readonly FileJoined[]): readonly Joined[] {
  return written.map((one, index) => {
    const place = `${spot.place}.joined.${index}`;
    const name = `joined line ${index + 1} of ${theAntenna(spot.name)}`;
    const path = [...spot.path, index];
    if ("stub" in one) {
      const line = buildLine(spot.build, one.stub, [...path, "stub"], `${place}.line`, name);
      return { line, length: one.length, from: one.at, farEnd: one["far end"] };
    }
    const crossed = fill<"yes" | "no">(spot.build, one.crossed, {
      place: `${place}.crossed`,
      name: `${name}: crossed`,
      value: "no",
      says: "no",
      reason: "not given: first legs joined with first legs",
    });
    const line = buildLine(spot.build, one.line, [...path, "line"], `${place}.line`, name);
    return { line, length: one.length, from: one.from, farEnd: { feed: one.to, crossed: crossed === "yes" } };
  });
}
