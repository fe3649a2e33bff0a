/** What the figures of `bounce` share: the film in the answer, as numbers. */
import type { Answer, Grid } from "@feedpath/engine";
import { plainText, significantText, withUnit } from "../kit/numberText";

export interface BounceFilm {
  /** ns and m. */
  readonly times: readonly number[];
  readonly distances: readonly number[];
  /** Row by row: V, V, V, A. */
  readonly forward: readonly (readonly number[])[];
  readonly reflected: readonly (readonly number[])[];
  readonly voltage: readonly (readonly number[])[];
  readonly current: readonly (readonly number[])[];
  /** One way along the line, ns. */
  readonly oneWay: number;
  /** First moment after time was left out; null where none was. */
  readonly cut: number | null;
  /** How large waves swing, where they are not shown as they swing. */
  readonly sizes: boolean;
}

export function gridOf(answer: Answer, name: string): Grid {
  const grid = answer.grids?.find((one) => one.name === name);
  if (!grid) throw new Error(`The answer to "${answer.question}" has no grid "${name}", which its figure draws.`);
  return grid;
}

const numbers = (grid: Grid): number[][] => grid.values.map((row) => row.map((value) => value ?? 0));

const films = new WeakMap<Answer, BounceFilm>();

/** Read once an answer: every picture of a film asks for it. */
export function bounceFilm(answer: Answer): BounceFilm {
  const known = films.get(answer);
  if (known) return known;
  const grid = gridOf(answer, "voltageOnLine");
  const oneWay = answer.values.oneWayTime;
  const { cut, shows } = answer.parameters;
  const film: BounceFilm = {
    times: grid.rows.values,
    distances: grid.columns.values,
    forward: numbers(gridOf(answer, "waveForward")),
    reflected: numbers(gridOf(answer, "waveReflected")),
    voltage: numbers(grid),
    current: numbers(gridOf(answer, "currentOnLine")),
    oneWay: oneWay && "value" in oneWay ? (oneWay.value ?? 0) : 0,
    cut: typeof cut === "number" ? cut : null,
    sizes: shows === "sizes",
  };
  films.set(answer, film);
  return film;
}

/** Largest magnitude in rows. */
export const largestIn = (...grids: readonly (readonly (readonly number[])[])[]): number =>
  Math.max(1e-12, ...grids.map((rows) => Math.max(...rows.map((row) => Math.max(...row.map(Math.abs))))));

/** "142 ns", "1.42 µs". */
export function timeText(ns: number): string {
  if (ns < 999.5) return withUnit(significantText(ns, 3), "ns");
  return ns < 999500 ? withUnit(significantText(ns / 1000, 3), "µs") : withUnit(significantText(ns / 1e6, 3), "ms");
}

/** "142 ns, 1 way along the line": time, and how often a front has gone the way; after the time left out, that it stays so. */
export function momentSays(film: BounceFilm, moment: number): string {
  const time = film.times[moment]!;
  if (film.cut !== null && moment >= film.cut) return `${timeText(time)}, as it stays`;
  const ways = plainText(time / film.oneWay, 1);
  if (ways === "0.5") return `${timeText(time)}, half a way along the line`;
  return `${timeText(time)}, ${ways} ${ways === "1" ? "way" : "ways"} along the line`;
}
