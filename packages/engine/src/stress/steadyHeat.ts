/** Temperatures of a line per metre of length when they no longer change, and the power that brings them to a limit. */

import { rootBetween } from "../numerics/crossings";
import type { Leaving } from "./surroundings";
import type { ThermalLine } from "./thermalLine";

/** Mean squares at the place looked at, A² and V² rms: those at peak envelope power times the mean share of it. */
export interface Drive {
  readonly current: number;
  readonly voltage: number;
}

export interface Temperatures {
  /** K. */
  readonly inner: number;
  readonly outer: number;
  readonly surface: number;
}

/** W/m made in the inner conductor, in the insulation and in the outer conductor. */
export interface LineHeat {
  readonly inner: number;
  readonly insulation: number;
  readonly outer: number;
}

/** Skin effect: resistance rises with the root of the resistivity. Same law as the line's constants. */
const warmer = (line: ThermalLine, kelvin: number): number =>
  Math.sqrt(Math.max(0.1, 1 + line.coefficient * (kelvin - 293.15)));

export function heatAt(line: ThermalLine, drive: Drive, t: Pick<Temperatures, "inner" | "outer">): LineHeat {
  return {
    inner: line.inner * warmer(line, t.inner) * drive.current,
    insulation: line.conductance * drive.voltage,
    outer: line.outer * warmer(line, t.outer) * drive.current,
  };
}

/** K at which as much leaves as is made; `ambient` K is where to begin. */
function surfaceFor(leaving: Leaving, watts: number, ambient: number): number {
  let high = ambient + 50;
  let low = ambient - 50;
  while (leaving(high) < watts && high < hopeless) high += 2 * (high - low);
  while (leaving(low) > watts && low > 1) low = Math.max(1, low - 50);
  return high >= hopeless ? hopeless : rootBetween((t) => leaving(t) - watts, low, high, 1e-6);
}

/** K above which nothing is worth telling. */
const hopeless = 3000;

/**
 * The circuit of IEC 60287-1-1 for one metre: half of the insulation's heat starts at the inner conductor. Conduction along
 * the line belongs into `drive` (`swing` of the standing wave). Iterated, since resistance rises with temperature.
 */
export function steadyTemperatures(line: ThermalLine, drive: Drive, leaving: Leaving, ambient: number): Temperatures {
  let t: Temperatures = { inner: ambient, outer: ambient, surface: ambient };
  for (let round = 0; round < 60; round++) {
    const heat = heatAt(line, drive, t);
    const all = heat.inner + heat.insulation + heat.outer;
    const surface = surfaceFor(leaving, all, ambient);
    const outer = surface + all * line.jacket;
    const inner = Math.min(hopeless, outer + (heat.inner + heat.insulation / 2) * line.insulation);
    const moved = Math.abs(inner - t.inner);
    t = { inner, outer, surface };
    if (moved < 1e-5 || inner >= hopeless) break;
  }
  return t;
}

/** A line that sends nothing: as warm as its surroundings, warmer in the sun. `ambient` in K. */
export const atRest = (line: ThermalLine, leaving: Leaving, ambient: number): Temperatures =>
  steadyTemperatures(line, { current: 0, voltage: 0 }, leaving, ambient);

/**
 * Times the power may be raised until `temperatureAt(times)` (K, rising, at least 0 times) reaches `limit`: 0 where it is there
 * without power, Infinity where no power brings it there. Rise over none is nearly proportional, so a few rounds do.
 */
export function timesToReach(temperatureAt: (times: number) => number, limit: number): number {
  const none = temperatureAt(0);
  if (none >= limit) return 0;
  let times = 1;
  for (let round = 0; round < 40; round++) {
    const rise = temperatureAt(times) - none;
    if (!(rise > 1e-9)) {
      if (times > 1e12) return Number.POSITIVE_INFINITY;
      times *= 1e3;
      continue;
    }
    const next = (times * (limit - none)) / rise;
    if (Math.abs(next / times - 1) < 1e-4) return next;
    times = next;
  }
  return times;
}

/**
 * m over which heat spreads along the metal: √(k A R), R the resistance (K m/W) from metal to surroundings at a rise of
 * `temperatures` over those at `rest` (`atRest`) with `watts` W/m.
 */
export function spreadLength(line: ThermalLine, temperatures: Temperatures, rest: Temperatures, watts: number): number {
  const rise = temperatures.inner - rest.inner;
  return watts > 0 && rise > 0 ? Math.sqrt((line.axial * rise) / watts) : 0;
}

/** What is left of a heat that alternates every half wavelength (phase constant `phase`, rad/m): 1/(1 + (2βℓ)²), exact for a long line. */
export const swingLeft = (phase: number, spread: number): number => 1 / (1 + (2 * phase * spread) ** 2);
