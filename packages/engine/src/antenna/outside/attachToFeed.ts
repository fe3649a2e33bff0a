/** The end of a run: the outer conductor meets the side of the feed that it belongs to. */
import type { Point } from "../../wires/structure";
import { addWires, assume, type Growing, samePoint } from "../growing";
import { distance } from "../wireRun";
import { openGap } from "./openGap";
import type { Opening } from "./openings";
import type { OutsideLine } from "./outsideLine";

/** A run under way. */
export type Reached = Omit<OutsideLine, "feed"> & { readonly at: Point };

/** A route may end this far (m) from its feed point: a box, a bracket. */
const tailWithin = 0.5;

export function attachToFeed(
  growing: Growing,
  feedName: string,
  reached: Reached | null,
  pending: readonly Opening[],
): void {
  if (reached === null) return;
  const named = growing.feeds.findIndex((f) => f.name === feedName);
  const index = named < 0 && growing.feeds.length === 1 ? 0 : named;
  const feed = growing.feeds[index];
  if (!feed) return;
  const off = distance(reached.at, feed.at);
  if (off > tailWithin) {
    const last = reached.lines.at(-1) ?? "the line";
    growing.notComputed.push(
      `the route of ${last} ends ${off.toFixed(1)} m from the feed point: its outside is in the model, but not joined to the antenna`,
    );
    return;
  }
  const wires = [...reached.wires];
  if (off > 1e-6) {
    const tail = { ...growing.wires[wires.at(-1)!]!, name: "tail of the line", from: reached.at, to: feed.at };
    wires.push(...addWires(growing, [tail]));
    assume(growing, "tail of the line", `straight, ${off.toFixed(2)} m`, "the route ends there, beside the feed point");
  }
  const last = wires.at(-1)!;
  const lastWire = growing.wires[last]!;
  const length = reached.length + (off > 1e-6 ? off : 0);
  const choke =
    pending.length > 0 ? openGap(growing, pending, last, distance(lastWire.from, lastWire.to), length) : null;
  const alone = feed.into.length === 0 && !growing.contacts.some((c) => samePoint(c.at, feed.at));
  if (alone && choke?.impedances.includes(null)) {
    growing.refused ??= {
      why: `"${feed.name}" works against the outside of its line, but ${choke.names.join(" and ")} parts it from the feed point: nothing is left to work against`,
      mend: "`against` radials, an earth or a conductor, or a transformer with `sides: joined`",
    };
  }
  growing.feeds[index] = { ...feed, into: [...feed.into, last] };
  const { at: _, ...run } = reached;
  growing.outside.push({ ...run, wires, length, feed: feed.name, chokes: choke ? [...run.chokes, choke] : run.chokes });
}
