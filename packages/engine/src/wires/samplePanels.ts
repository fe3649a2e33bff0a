/** Panels of Gauss points along the wires, short enough for what varies over them. */
import { wireLength } from "./geometry";
import type { Structure, Wire } from "./structure";

export const pointsPerPanel = 8;
/**
 * Longest panel in wavelengths, and in heights of its lower end: reflected kernels vary on the scale of the height, or,
 * near the soil, where their quasi-static images are integrated apart, of the soil's length (soilLength).
 */
const longestInWavelengths = 0.3;
const longestInHeights = 2.5;

/** Wires that come down to this many soil lengths are low: what is left of their images varies no faster. */
const lowInSoilLengths = 0.8;

export const isLow = (wire: Wire, soil: number | null): boolean =>
  soil !== null && Math.min(wire.from[2], wire.to[2]) < lowInSoilLengths * soil;

/** Panel edges as distances from the wire's start. */
export function panelEdges(wire: Wire, wavelength: number, soil: number | null): number[] {
  const length = wireLength(wire);
  const [zFrom, zTo] = [wire.from[2], wire.to[2]];
  const low = Math.min(zFrom, zTo);
  const slope = Math.abs(zTo - zFrom) / length;
  const edges = [0];
  let at = 0;
  while (at < length * (1 - 1e-9)) {
    const least = soil !== null && isLow(wire, soil) ? lowInSoilLengths * soil : 0;
    const byHeight = soil === null ? Number.POSITIVE_INFINITY : longestInHeights * Math.max(low + slope * at, least);
    at += Math.min(longestInWavelengths * wavelength, byHeight);
    edges.push(at);
  }
  const fitted = edges.map((e) => (e * length) / at);
  return zFrom <= zTo ? fitted : fitted.map((e) => length - e).reverse();
}

/** Sample points a structure would need over soil of a length (soilLength, m; null: none); known before memory is taken. */
export const countSamplePoints = (structure: Structure, wavelength: number, soil: number | null): number =>
  structure.wires.reduce((sum, w) => sum + pointsPerPanel * (panelEdges(w, wavelength, soil).length - 1), 0);
