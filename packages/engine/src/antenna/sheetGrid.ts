/**
 * A metal sheet as a grid of wires. Bars are as thick as makes the surface of all of them in one direction that of the
 * sheet (circumference = pitch; common practice for wire grids, no source); the grid is as fine as the highest
 * frequency of the station asks for. sheetGrid.test.ts shows how it converges.
 */
import { speedOfLight } from "../numerics/vacuum";
import type { Station, Surrounding } from "../station/station";
import type { Point, Wire } from "../wires/structure";
import { distance, pointOf } from "./wireRun";

type Sheet = Extract<Surrounding, { kind: "sheet" }>;

/** Cells to a wavelength wanted, and fewest with which a grid still stands for a sheet (common practice: a tenth). */
const wantedCells = 18;
const fewestCells = 10;
/** Thickest bar in wavelengths: what the method holds for. */
const thickest = 0.0095;
/** Most bars of one sheet: some seconds of work. */
const mostBars = 420;
/** Conductivity of the sheet, S/m: galvanised steel or aluminium alike lose next to nothing against the soil. */
const sheetConductivity = 1e7;

export interface SheetGrid {
  readonly wires: readonly Wire[];
  /** Longest side of a cell, m. */
  readonly pitch: number;
}

export interface NoGrid {
  readonly cannot: string;
}

/** Wires of the grid, or why the sheet cannot be gridded. */
export function sheetGrid(station: Station, sheet: Sheet): SheetGrid | NoGrid {
  const corners = sheet.corners.map(pointOf);
  if (corners.length !== 3 && corners.length !== 4)
    return {
      cannot: `the sheet "${sheet.name}" has ${corners.length} corners: divide it into sheets of three or four`,
    };
  const wave = speedOfLight / Math.max(...station.bands.map((b) => Math.max(b.frequency.value, b.sweep.to)));
  const [a, b, c, d] = [corners[0]!, corners[1]!, corners[2]!, corners[3] ?? corners[2]!];
  const along = Math.max(distance(a, b), distance(d, c));
  const across = Math.max(distance(b, c), distance(a, d));
  for (let cells = wantedCells; cells >= fewestCells; cells--) {
    const [m, n] = [along, across].map((side) => Math.max(1, Math.ceil((side * cells) / wave))) as [number, number];
    if (2 * m * n + m + n > mostBars) continue;
    const pitch = Math.max(along / m, across / n);
    return { wires: bars(sheet.name, [a, b, c, d], m, n, Math.min(pitch / (2 * Math.PI), thickest * wave)), pitch };
  }
  return {
    cannot: `the sheet "${sheet.name}" is ${Number((along / wave).toFixed(1))} by ${Number((across / wave).toFixed(1))} wavelengths: its grid would need more than ${mostBars} wires`,
  };
}

/** Bars between neighbouring points of the corners' bilinear map; a triangle's last side has shrunk to a point. */
function bars(
  name: string,
  [a, b, c, d]: readonly [Point, Point, Point, Point],
  m: number,
  n: number,
  radius: number,
): Wire[] {
  const at = (i: number, j: number): Point => {
    const [s, t] = [i / m, j / n];
    return [0, 1, 2].map((x) => (1 - t) * ((1 - s) * a[x]! + s * b[x]!) + t * ((1 - s) * d[x]! + s * c[x]!)) as [
      number,
      number,
      number,
    ];
  };
  const wires: Wire[] = [];
  const add = (from: Point, to: Point): void => {
    if (distance(from, to) < 1e-6) return;
    wires.push({
      name: `${name}, bar ${wires.length + 1}`,
      from,
      to,
      radius: Math.min(radius, distance(from, to) / (2 * Math.PI)),
      conductivity: sheetConductivity,
      permeability: 1,
      insulation: null,
      bar: true,
    });
  };
  for (let j = 0; j <= n; j++) for (let i = 0; i < m; i++) add(at(i, j), at(i + 1, j));
  for (let i = 0; i <= m; i++) for (let j = 0; j < n; j++) add(at(i, j), at(i, j + 1));
  return wires;
}
