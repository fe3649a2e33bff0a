/** The table `band`: what stands at both ends of the line over frequency. */
import type { Column, Table } from "../../answer/answer";
import { driveSolved } from "../../chain/driveSolved";
import { radiatedPower } from "../../fields/powerAccount";
import { chebyshevPoints, interpolateChebyshev } from "../../numerics/chebyshevPoints";
import { one } from "../../numerics/complex";
import type { Radiating } from "../../wires/radiating";
import { column, columnOver } from "../common/columns";
import type { Worked } from "../common/worked";
import { columnKey, type Sweep } from "./sweep";

const finite = (x: number): number | null => (Number.isFinite(x) ? x : null);

export function bandTable(worked: Worked, sweep: Sweep): Table {
  const { curve, bounds } = sweep;
  const spanned = (name: "swrAtTransmitter" | "swrAtFeedPoint"): Column => {
    const values = curve.map((p) => finite(p[name]));
    const end = (numbers: typeof bounds.low, least: number) =>
      curve.map((p, i) => Math.max(least, numbers[columnKey(name, i)] ?? p[name]));
    return bounds.effects.length === 0 || values.includes(null)
      ? { unit: "1", values }
      : { unit: "1", values, low: end(bounds.low, 1), high: end(bounds.high, 1) };
  };
  return {
    name: "band",
    axis: "frequency",
    columns: {
      frequency: columnOver(curve, "MHz", (p) => p.frequency / 1e6),
      swrAtTransmitter: spanned("swrAtTransmitter"),
      swrAtFeedPoint: spanned("swrAtFeedPoint"),
      feedPointResistance: columnOver(curve, "ohm", (p) => p.feedPoint.re),
      feedPointReactance: columnOver(curve, "ohm", (p) => p.feedPoint.im),
      lineLoss: columnOver(curve, "dB", (p) => p.lineLoss),
      radiatedPower: column("W", radiated(worked, sweep)),
    },
  };
}

/** Share of the antenna's power that leaves: at nine frequencies, interpolated between them; null with several feeds in use. */
function radiated(worked: Worked, { curve, radiating }: Sweep): (number | null)[] {
  const from = curve[0]!.frequency;
  const to = curve[curve.length - 1]!.frequency;
  if (worked.point.antenna.feeds.length !== 1) return curve.map(() => null);
  const nodes = chebyshevPoints(from, to, 8);
  const shares = nodes.map((f) => {
    const there = radiating ? radiating(f, [one]) : solvedAt(worked, f);
    return there === null ? Number.NaN : radiatedPower(there) / there.powerIn;
  });
  return curve.map((p) => finite(interpolateChebyshev(nodes, shares, p.frequency) * p.powerIntoAntenna));
}

function solvedAt({ solver, station }: Worked, frequency: number): Radiating | null {
  const solved = solver.solve(station, frequency);
  return "refused" in solved ? null : driveSolved(solved, [one]);
}
