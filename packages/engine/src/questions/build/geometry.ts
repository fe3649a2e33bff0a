/** What of a built line's geometry the sentences and spans of `build` need, for every kind. */
import { outerRadius } from "../../conductors/roundConductor";
import type { BuiltLine, RoundConductor } from "../../lines/lineModel";
import { speedOfLight } from "../../numerics/vacuum";

export interface Geometry {
  /** The conductor that a caliper finds first: inner one, or a wire. */
  readonly wire: RoundConductor;
  readonly insulation: string;
  /** Relative, where it fills all the field; null where part of the field lies in something else. */
  readonly permittivity: number | null;
  /** Diameters as a caliper has them, strands by their outside: D/d, spacing over diameter, or height over diameter. */
  readonly ratio: number;
  /** m across the field; a pair sends when this is no longer small against a wave. */
  readonly width: number;
}

export function geometryOf(line: BuiltLine): Geometry {
  const wire = line.kind === "coaxial" ? line.inner : line.wire;
  const diameter = 2 * outerRadius(wire);
  const width = widthOf(line);
  const { name, permittivity } = line.kind === "twisted pair" ? line.sleeve.dielectric : line.dielectric;
  const mixed = line.kind === "twisted pair" || (line.kind === "parallel-wire" && line.insulation !== undefined);
  return { wire, insulation: name, permittivity: mixed ? null : permittivity, ratio: width / diameter, width };
}

function widthOf(line: BuiltLine): number {
  switch (line.kind) {
    case "coaxial":
      return 2 * line.outer.innerRadius;
    case "parallel-wire":
    case "shielded pair":
      return line.spacing.value;
    case "twisted pair":
      return 2 * line.sleeve.outerRadius;
    case "wire over plane":
      return 2 * line.height.value;
    case "four-wire":
      return line.side.value;
  }
}

/** Hz up to which a pair is followed: its width is then a tenth of a wave, and beyond it sends. Common practice, no source. */
export const pairsEnd = (line: BuiltLine): number | null =>
  line.kind === "coaxial" ? null : speedOfLight / (10 * widthOf(line));
