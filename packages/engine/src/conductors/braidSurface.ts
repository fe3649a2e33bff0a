/** What the wires of a braid make of its resistance. */
import { coverageOfFill, type KnownBraid } from "./braidGeometry";
import type { Metal } from "./conductor";

/**
 * Loss of a flat row of wires that touch over that of a plane, the field on one side, skin depth small: the limit of
 * strandRing for ever more strands, to four figures.
 */
export const rowFactor = 1.0855;

/**
 * Surface resistance of a braid at small skin depth over that of a smooth tube, seen from inside. Our derivation, no source:
 * every wire keeps its current wherever it lies, because oxide parts the wires; so each direction carries half of the axial
 * field H, at every place one direction above the other. By the steps of the field at both layers the
 * upper wires bear H cos(a) across them in front and H cos(2a)/(2 cos(a)) behind, the lower ones H/(2 cos(a)) in front, and H
 * sin(a) along the upper wires makes currents round each. With K the coverage, F the fill of one direction:
 * k [cos^2(a)/K + (cos^2(2a) + 1)/(4 F cos^2(a))] + pi K sin^2(a). Wires in good contact have less, down to k/K; common
 * practice takes 2 to 3 for all braids. `fill` above 0 up to 1, `angle` in radians from the axis.
 */
export function braidSurfaceFactor(fill: number, angle: number): number {
  const coverage = coverageOfFill(fill);
  const [c, s, c2] = [Math.cos(angle), Math.sin(angle), Math.cos(2 * angle)];
  const across = (c * c) / coverage + (c2 * c2 + 1) / (4 * fill * c * c);
  return rowFactor * across + Math.PI * coverage * s * s;
}

/** Direct-current resistance of one layer, ohm/m: 4/(pi d^2 N C sigma cos(a)). Source: Vance, IEEE Trans. EMC-17 (1975) 71. */
export const braidResistance = ({ carriers, ends, wire, angle }: KnownBraid, metal: Metal): number =>
  4 / (Math.PI * wire ** 2 * ends * carriers * metal.conductivity * Math.cos(angle));
