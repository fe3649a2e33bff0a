/** Every echo by its number: when and where it sets out, how large, and what stands there afterwards. */
import type { Column, Table } from "../../answer/answer";
import { magnitude } from "../../numerics/complex";
import { powerOf, sumOfWaves } from "../../pulses/echoes";
import { column, columnOver } from "../common/columns";
import { nanoseconds, short } from "./columns";
import type { BounceStudy } from "./study";

/** Rows told: up to where everything is settled and two more, but not more than forty. */
export const mostRows = 40;

/** Echo 0 is the first wave. A carrier's echoes are rms phasors; those of a step or a pulse are read from the film. */
export function echoTable(study: BounceStudy): Table {
  const { asked, lattice, delay, looked } = study;
  const rows = Math.min(mostRows, (study.echoes ?? mostRows) + 3);
  const numbers = Array.from({ length: rows }, (_, k) => k);
  const atLoad = (k: number): boolean => k % 2 === 1;
  const shared = {
    echo: column("1", numbers),
    setsOut: columnOver(numbers, "ns", (k) => nanoseconds(k * delay)),
    setsOutAt: columnOver(numbers, "m", (k) => (atLoad(k) ? looked.length : 0)),
  };
  const size = (k: number) => magnitude(lattice.waves[k]!) / magnitude(lattice.waves[0]!);
  if (asked.signal !== "carrier")
    return { name: "echoes", axis: "echo", columns: { ...shared, ...filmedEchoes(study, rows) } };
  const after = numbers.map((k) => sumOfWaves(lattice, k, atLoad(k) ? looked.length : 0));
  const arrived = numbers.map((k) => sumOfWaves(lattice, atLoad(k) ? k : k + 1, looked.length));
  return {
    name: "echoes",
    axis: "echo",
    columns: {
      ...shared,
      wave: columnOver(numbers, "V", (k) => short(magnitude(lattice.waves[k]!))),
      share: columnOver(numbers, "%", (k) => short(100 * size(k))),
      voltageAfter: columnOver(after, "V", (s) => short(magnitude(s.voltage))),
      powerIntoLoadAfter: columnOver(arrived, "W", (s) => short(powerOf(s.voltage, s.current))),
    },
  };
}

/** Height of the wave that sets out, less what set out there two ways before; the end's voltage just before the next change. */
function filmedEchoes(study: BounceStudy, rows: number): Record<string, Column> {
  const { film, stepped, plan, asked } = study;
  const { sections, surgeImpedance: z } = stepped;
  const departing = (k: number, n: number): number => {
    const [v, i] =
      k % 2 === 1 ? [film.loadVoltage[n]!, -film.loadCurrent[n]!] : [film.inputVoltage[n]!, film.inputCurrent[n]!];
    return (v + z * i) / 2;
  };
  const heights: (number | null)[] = [];
  const after: (number | null)[] = [];
  for (let k = 0; k < rows; k++) {
    const [from, to] = [k * sections, (k + 2) * sections - 1];
    if (to >= plan.steps) {
      heights.push(null);
      after.push(null);
      continue;
    }
    const before = from > sections ? departing(k, from - 1) : 0;
    heights.push(
      short(asked.signal === "step" ? departing(k, to) - before : greatest((n) => departing(k, n), from, to)),
    );
    after.push(short(k % 2 === 1 ? film.loadVoltage[to]! : film.inputVoltage[to]!));
  }
  const first = heights[0] ?? 0;
  const share = heights.map((h) => (h === null || first === 0 ? null : short((100 * h) / first)));
  return { wave: column("V", heights), share: column("%", share), voltageAfter: column("V", after) };
}

/** The greatest excursion to either side, with its sign. */
export function greatest(of: (n: number) => number, from: number, to: number): number {
  let best = 0;
  for (let n = from; n <= to; n++) if (Math.abs(of(n)) > Math.abs(best)) best = of(n);
  return best;
}
