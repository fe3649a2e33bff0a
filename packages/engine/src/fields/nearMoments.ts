/**
 * Currents of straight wires gathered in a few points for one place: panels no longer than the way from their image to
 * the place, on which the reflected field is a polynomial, eight points each.
 */
import { barycentricWeights, lagrangeRow } from "../numerics/barycentric";
import { gaussLegendre } from "../numerics/gaussLegendre";
import type { CurrentElement } from "./nearDirect";

/** Current moment (A m) and integral of the current's slope (A) at one point of a wire; re and im. */
export interface WireMoment {
  readonly position: readonly [number, number, number];
  readonly direction: readonly [number, number, number];
  readonly current: Float64Array;
  readonly charge: Float64Array;
}

const longestInWavelengths = 0.15;
const rule = gaussLegendre(8);
const ruleWeights = barycentricWeights(rule.points);
const overlapRule = gaussLegendre(6);
const row = new Float64Array(rule.points.length);

/** Elements of one straight wire, one after the other, and where each begins along it. */
interface Run {
  readonly elements: readonly CurrentElement[];
  readonly starts: readonly number[];
  readonly length: number;
}

/** Metres from a place to the image of the stretch [from, to] of a run. */
function wayToImage({ elements }: Run, from: number, to: number, place: readonly number[]): number {
  const { start, direction: u } = elements[0]!;
  const d = [place[0]! - start[0], place[1]! - start[1], place[2]! + start[2]];
  const foot = d[0]! * u[0] + d[1]! * u[1] - d[2]! * u[2];
  const at = Math.min(to, Math.max(from, foot));
  return Math.hypot(d[0]! - at * u[0], d[1]! - at * u[1], d[2]! + at * u[2]);
}

function addOverlap(element: CurrentElement, start: number, panel: readonly [number, number], moments: WireMoment[]) {
  const from = Math.max(start, panel[0]);
  const to = Math.min(start + element.length, panel[1]);
  const half = (to - from) / 2;
  overlapRule.points.forEach((x, g) => {
    const s = from + half * (1 + x);
    const weight = half * overlapRule.weights[g]!;
    lagrangeRow(rule.points, ruleWeights, (2 * (s - panel[0])) / (panel[1] - panel[0]) - 1, row);
    moments.forEach((moment, m) => {
      for (let c = 0; c < 2; c++) {
        moment.current[c]! += weight * row[m]! * (element.current[c]! + element.slope[c]! * (s - start));
        moment.charge[c]! += weight * row[m]! * element.slope[c]!;
      }
    });
  });
}

function panelMoments(run: Run, from: number, to: number): WireMoment[] {
  const { start, direction } = run.elements[0]!;
  const moments = [...rule.points].map((x): WireMoment => {
    const s = from + ((to - from) * (1 + x)) / 2;
    return {
      position: [start[0] + s * direction[0], start[1] + s * direction[1], start[2] + s * direction[2]],
      direction,
      current: new Float64Array(2),
      charge: new Float64Array(2),
    };
  });
  run.elements.forEach((element, i) => {
    const start = run.starts[i]!;
    if (start < to && start + element.length > from) addOverlap(element, start, [from, to], moments);
  });
  return moments;
}

function splitRun(run: Run, from: number, to: number, place: readonly number[], longest: number): WireMoment[] {
  if (to - from <= Math.min(longest, wayToImage(run, from, to, place))) return panelMoments(run, from, to);
  const middle = (from + to) / 2;
  return [...splitRun(run, from, middle, place, longest), ...splitRun(run, middle, to, place, longest)];
}

/**
 * Moments of all wires as seen from a place (m) above the soil; `wires` holds the elements of each straight wire in their
 * order, `wavelength` is in m. No image may lie at the place itself.
 */
export function momentsFor(
  wires: readonly (readonly CurrentElement[])[],
  place: readonly number[],
  wavelength: number,
): WireMoment[] {
  return wires.flatMap((elements) => {
    let length = 0;
    const starts = elements.map((element) => {
      length += element.length;
      return length - element.length;
    });
    return splitRun({ elements, starts, length }, 0, length, place, longestInWavelengths * wavelength);
  });
}
