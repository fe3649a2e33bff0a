/** Radials of a one-sided antenna: raised, or lying on the soil. */
import type { Radials } from "../station/antennaDescription";
import type { Point, Wire } from "../wires/structure";
import { assume, type Growing } from "./growing";
import { offset, wireOf } from "./wireRun";

/**
 * Height (m) of the axis of a wire that lies on the soil: grass and unevenness carry it. The return side hangs on it
 * little; question `radials` shows how much.
 */
const lyingHeight = 5e-3;
/** A base at most this high (m) over radials on the soil is taken down to them. */
export const standsOnThem = 0.1;

export interface RadialWires {
  readonly wires: readonly Wire[];
  /** Where they meet: the base, or the foot of a lead from it. */
  readonly hub: Point;
}

export interface RadialsRefused {
  readonly refused: string;
  readonly mend: string;
}

export const heightOnSoil = (wire: Wire): number =>
  Math.max(lyingHeight, 2 * (wire.insulation?.outerRadius ?? wire.radius));

/** Wires from the hub outwards; `base` is the foot of the antenna. */
export function radialWires(radials: Radials, base: Point, growing: Growing): RadialWires | RadialsRefused {
  if (radials.lie !== "on the soil" && radials.lie.value <= 0) {
    return {
      refused: "not computed yet: radials under the soil",
      mend: "raised radials (`lie: 2.4 m up`) or such on the soil (`lie: on the soil`)",
    };
  }
  return radials.lie === "on the soil" ? onSoil(radials, base, growing) : raised(radials, base, radials.lie.value);
}

function azimuths({ count, over: { from, to } }: Radials): number[] {
  const whole = to - from >= 2 * Math.PI - 1e-9;
  const step = (to - from) / (whole ? count : Math.max(1, count - 1));
  return Array.from({ length: count }, (_, i) => from + i * step);
}

function onSoil(radials: Radials, base: Point, growing: Growing): RadialWires {
  const length = radials.length.value;
  const height = heightOnSoil(wireOf("radial", base, offset(base, 0, length), radials.wire));
  const hub: Point = [base[0], base[1], height];
  const wires = azimuths(radials).map((azimuth, i) =>
    wireOf(`radial ${i + 1}`, hub, offset(hub, azimuth, length), radials.wire),
  );
  assume(
    growing,
    "radials on the soil",
    `their axis ${Number((1000 * height).toFixed(1))} mm above it`,
    "grass and unevenness; they are not in contact with the soil",
  );
  return { wires, hub };
}

/** Sloping from the base to their height. */
function raised(radials: Radials, base: Point, height: number): RadialWires | RadialsRefused {
  const drop = height - base[2];
  if (Math.abs(drop) >= radials.length.value) {
    return {
      refused: `radials of ${radials.length.value} m cannot reach from the base at ${base[2]} m to a height of ${height} m`,
      mend: "another `lie`, `length` or `base`",
    };
  }
  const run = Math.sqrt(radials.length.value ** 2 - drop ** 2);
  const wires = azimuths(radials).map((azimuth, i) =>
    wireOf(`radial ${i + 1}`, base, offset(base, azimuth, run, drop), radials.wire),
  );
  return { wires, hub: base };
}
