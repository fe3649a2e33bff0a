/** The geometry of a braid: what carriers, ends, wire and angle cover of the line below. */
import type { Braid } from "./shield";

/** A braid all of whose wires are known. Metres, radians. */
export interface KnownBraid {
  readonly carriers: number;
  readonly ends: number;
  readonly wire: number;
  readonly angle: number;
  readonly layers: number;
  /** Diameter on which the carriers cross: that below the braid and two wires. */
  readonly meanDiameter: number;
  /** Share of the surface that the carriers of one direction cover. */
  readonly fill: number;
  readonly coverage: number;
}

/** Share covered by both directions: K = 2 F - F^2. Source: MIL-DTL-17 general requirements (from memory). */
export const coverageOfFill = (fill: number): number => fill * (2 - fill);

/** The other way round; `coverage` above 0, at most 1. */
export function fillOfCoverage(coverage: number): number {
  if (!(coverage > 0 && coverage <= 1)) {
    throw new RangeError(`braid: coverage ${coverage}; expected more than 0 and at most 1 (95 % is 0.95)`);
  }
  return 1 - Math.sqrt(1 - coverage);
}

const meanDiameter = (innerRadius: number, wire: number): number => 2 * innerRadius + 2 * wire;

/** Angle to the axis in radians of a carrier that goes once round in `lay` m: tan = pi (D + 2 d)/lay. */
export const braidAngle = (innerRadius: number, wire: number, lay: number): number =>
  Math.atan((Math.PI * meanDiameter(innerRadius, wire)) / lay);

/**
 * The whole geometry over a line of `innerRadius` m, or null where carriers, ends, wire or angle are not known.
 * F = N C d/(2 pi (D + 2 d) cos(angle)). RangeError for wires that do not fit beside each other, and for an angle or
 * coverage that cannot be. Source: MIL-DTL-17 general requirements (from memory).
 */
export function knownBraid(innerRadius: number, braid: Braid): KnownBraid | null {
  checkBraid(braid);
  const { carriers, ends, wire, angle, layers } = braid;
  if (carriers === null || ends === null || wire === null || angle === null) return null;
  const diameter = meanDiameter(innerRadius, wire);
  const fill = (ends * carriers * wire) / (2 * Math.PI * diameter * Math.cos(angle));
  if (fill > 1) {
    const most = Math.floor(ends / fill);
    throw new RangeError(
      `braid: ${carriers} carriers of ${ends} wires of ${wire} m at ${inDegrees(angle)} degrees fill ${fill.toFixed(3)} of the way round ` +
        `a mean diameter of ${diameter} m; expected at most 1: ${most} ends a carrier at most, a thinner wire, or a smaller angle`,
    );
  }
  return { carriers, ends, wire, angle, layers, meanDiameter: diameter, fill, coverage: coverageOfFill(fill) };
}

/** Optical coverage from the wires where they are known, else as stated, else null. */
export const braidCoverage = (innerRadius: number, braid: Braid): number | null =>
  knownBraid(innerRadius, braid)?.coverage ?? braid.coverage;

const inDegrees = (angle: number): string => ((180 * angle) / Math.PI).toFixed(1);

function checkBraid({ coverage, carriers, ends, wire, angle, layers }: Braid): void {
  if (coverage !== null) fillOfCoverage(coverage);
  if (angle !== null && !(angle >= 0 && angle < Math.PI / 2)) {
    throw new RangeError(`braid: angle ${inDegrees(angle)} degrees to the axis; expected 0 up to 90, not 90 itself`);
  }
  if ([carriers, ends, wire].some((x) => x !== null && !(x > 0)) || !(layers === 1 || layers === 2)) {
    throw new RangeError(
      `braid: ${carriers} carriers, ${ends} ends, wire of ${wire} m, ${layers} layers; expected positive numbers and 1 or 2 layers`,
    );
  }
}
