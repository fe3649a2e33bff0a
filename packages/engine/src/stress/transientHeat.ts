/** How temperatures of a line rise and fall with transmissions. */
import { type Drive, heatAt, type Temperatures } from "./steadyHeat";
import type { Leaving } from "./surroundings";
import type { ThermalLine } from "./thermalLine";

export interface Course {
  /** s, from 0. */
  readonly times: readonly number[];
  readonly temperatures: readonly Temperatures[];
}

/** One step of `seconds`, backward Euler on the three nodes; what leaves is straight about the surface's temperature. */
function step(line: ThermalLine, t: Temperatures, drive: Drive, leaving: Leaving, seconds: number): Temperatures {
  const [ci, co, cs] = line.capacities.map((c) => c / seconds) as [number, number, number];
  const heat = heatAt(line, drive, t);
  const [g1, g2] = [1 / line.insulation, 1 / line.jacket];
  const small = 0.1;
  const leaves = leaving(t.surface);
  const slope = (leaving(t.surface + small) - leaves) / small;
  // Inner and surface are eliminated from the balance of the outer node.
  const innerOwn = ci + g1;
  const innerSource = ci * t.inner + heat.inner + heat.insulation / 2;
  const surfaceOwn = cs + g2 + slope;
  const surfaceSource = cs * t.surface - leaves + slope * t.surface;
  const own = co + g1 + g2 - (g1 * g1) / innerOwn - (g2 * g2) / surfaceOwn;
  const source =
    co * t.outer + heat.outer + heat.insulation / 2 + (g1 * innerSource) / innerOwn + (g2 * surfaceSource) / surfaceOwn;
  const outer = source / own;
  return {
    inner: (innerSource + g1 * outer) / innerOwn,
    outer,
    surface: (surfaceSource + g2 * outer) / surfaceOwn,
  };
}

/** Equal steps over `seconds` from `start` under one drive; the start stands first. */
export function warmOver(
  line: ThermalLine,
  start: Temperatures,
  drive: Drive,
  leaving: Leaving,
  span: { readonly seconds: number; readonly steps: number },
): Course {
  const each = span.seconds / span.steps;
  const temperatures = [start];
  for (let i = 0; i < span.steps; i++) temperatures.push(step(line, temperatures.at(-1)!, drive, leaving, each));
  return { times: temperatures.map((_, i) => i * each), temperatures };
}

export interface Rhythm {
  /** s of sending in every `of` s. */
  readonly on: number;
  readonly of: number;
}

/** Sending and pausing by turns, `rounds` times from `start`; `steps` in each half. The first of each half repeats the last before it. */
export function warmInTurns(
  line: ThermalLine,
  start: Temperatures,
  drive: Drive,
  leaving: Leaving,
  plan: { readonly rhythm: Rhythm; readonly rounds: number; readonly steps: number },
): Course {
  const { rhythm, rounds, steps } = plan;
  const times = [0];
  const temperatures = [start];
  const add = (seconds: number, now: Drive): void => {
    if (!(seconds > 0)) return;
    const part = warmOver(line, temperatures.at(-1)!, now, leaving, { seconds, steps });
    const from = times.at(-1)!;
    times.push(...part.times.slice(1).map((t) => from + t));
    temperatures.push(...part.temperatures.slice(1));
  };
  for (let i = 0; i < rounds; i++) {
    add(rhythm.on, drive);
    add(rhythm.of - rhythm.on, { current: 0, voltage: 0 });
  }
  return { times, temperatures };
}

/** K, the hottest inner conductor in the last of `rounds` turns. */
export const hottestInLast = (course: Course, rounds: number): number => {
  const from = Math.floor(((course.temperatures.length - 1) * (rounds - 1)) / rounds);
  return Math.max(...course.temperatures.slice(from).map((t) => t.inner));
};

/** s in which the inner conductor makes 1 − 1/e of its way to where it ends: from the course of a steady drive. */
export function timeConstant(course: Course, end: number): number | null {
  const start = course.temperatures[0]!.inner;
  const level = start + (1 - Math.exp(-1)) * (end - start);
  const i = course.temperatures.findIndex((t) => t.inner >= level);
  if (i < 1) return null;
  const [a, b] = [course.temperatures[i - 1]!.inner, course.temperatures[i]!.inner];
  return course.times[i - 1]! + ((level - a) / (b - a)) * (course.times[i]! - course.times[i - 1]!);
}
