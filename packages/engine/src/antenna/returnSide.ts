/** What a one-sided shape works against: raised radials, another wire, a conductor of the surroundings. */
import type { Antenna } from "../station/antennaDescription";
import type { Station } from "../station/station";
import type { Point, Wire } from "../wires/structure";
import { meets } from "./shapes/shapeWires";
import { type Built, offset, wireOf } from "./wireRun";

export type ReturnSide = { readonly built: Built } | { readonly refused: string; readonly mend: string };

/** Raised radials from the base outwards, sloping from the base to their height. */
export function raisedRadials(antenna: Antenna, base: Point): ReturnSide {
  const radials = antenna.radials;
  if (!radials)
    return { refused: "the antenna works against radials, but the file gives none", mend: "a `radials` entry" };
  if (radials.lie === "on the soil" || radials.lie.value <= 0) {
    return {
      refused: "not computed yet: radials on or under the soil",
      mend: "raised radials (`lie: 2.4 m up`), or a later version",
    };
  }
  const height = radials.lie.value;
  const { from, to } = radials.over;
  const whole = to - from >= 2 * Math.PI - 1e-9;
  const step = (to - from) / (whole ? radials.count : Math.max(1, radials.count - 1));
  const drop = height - base[2];
  if (Math.abs(drop) >= radials.length.value) {
    return {
      refused: `radials of ${radials.length.value} m cannot reach from the base at ${base[2]} m to a height of ${height} m`,
      mend: "another `lie`, `length` or `base`",
    };
  }
  const run = Math.sqrt(radials.length.value ** 2 - drop ** 2);
  const wires: Wire[] = Array.from({ length: radials.count }, (_, i) =>
    wireOf(`radial ${i + 1}`, base, offset(base, from + i * step, run, drop), radials.wire),
  );
  return { built: { wires, legs: wires.map((w, i) => ({ name: w.name, wires: [i] })), feeds: [] } };
}

/** The feed of a one-sided shape joined to its return; `surrounding` wires stand before the antenna's in the list. */
export function fedAgainst(
  station: Station,
  antenna: Antenna,
  oneSided: Built,
  feedName: string,
): ReturnSide | { readonly surrounding: string } {
  const base = oneSided.wires[0]!.from;
  const against = antenna.against;
  if (against === null) {
    return {
      refused: "the antenna has one side only and the file does not say what it works against",
      mend: "`against:` in the antenna",
    };
  }
  if (against === "outside of the line") {
    return {
      refused: "not computed yet: an antenna that works against the outside of its line",
      mend: "`against: radials` or a wire",
    };
  }
  if (against === "radials") {
    const side = raisedRadials(antenna, base);
    if ("refused" in side) return side;
    const count = oneSided.wires.length;
    const radials = side.built.wires.map((_, i) => count + i);
    return {
      built: {
        wires: [...oneSided.wires, ...side.built.wires],
        legs: [...oneSided.legs, ...side.built.legs.map((l) => ({ ...l, wires: l.wires.map((w) => w + count) }))],
        feeds: [{ name: feedName, at: base, from: [0], into: radials }],
      },
    };
  }
  if (station.earths.some((e) => e.name === against)) {
    return {
      refused: `not computed yet: an antenna that works against the earth "${against}"`,
      mend: "raised radials or a wire",
    };
  }
  const conductor = station.surroundings.find((s) => s.kind === "conductor" && s.name === against);
  if (!conductor)
    return { refused: `nothing in the file is called "${against}"`, mend: "the name of a conductor of `surroundings`" };
  return { surrounding: against };
}

/** Wires of a list that have an end at a point. */
export const wiresAt = (wires: readonly Wire[], at: Point): number[] =>
  wires.flatMap((w, i) => (meets(w.from, at) || meets(w.to, at) ? [i] : []));
