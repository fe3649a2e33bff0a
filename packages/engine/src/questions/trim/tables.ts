/** The tables `trim` (SWR and feed point over length) and `ladder` (what to cut for what is measured). */
import type { Column, Table } from "../../answer/answer";
import { swr } from "../../lines/reflection";
import { column, columnOver } from "../common/columns";
import type { Rung } from "./ladder";
import type { Study } from "./study";
import type { TrimEnd } from "./trimmed";

const points = 81;
/** Beyond the outermost mark the curves go on by this share of the length. */
const shoulder = 0.05;

const finite = (x: number): number | null => (Number.isFinite(x) ? x : null);

export function trimTable({ scan, path, bench }: Study): Table {
  const marks = [bench.trimmed.length, scan.lowestSwr, scan.lowestSwrAtFeedPoint, scan.resonance].filter(
    (x): x is number => x !== null,
  );
  const whole = scan.lowestSwr === null;
  const from = whole ? scan.span.from : Math.max(scan.span.from, Math.min(...marks) * (1 - shoulder));
  const to = whole ? scan.span.to : Math.min(scan.span.to, Math.max(...marks) * (1 + shoulder));
  const lengths = Array.from({ length: points }, (_, i) => from + ((to - from) * i) / (points - 1));
  const feed = lengths.map((l) => scan.feed.at(l));
  return {
    name: "trim",
    axis: "length",
    columns: {
      length: column("m", lengths),
      swrAtTransmitter: column(
        "1",
        feed.map((z) => finite(swr(path.towardsTransmitter(bench.frequency, z), bench.rated))),
      ),
      swrAtFeedPoint: columnOver(feed, "1", (z) => finite(swr(z, bench.rated))),
      feedPointResistance: columnOver(feed, "ohm", (z) => z.re),
      feedPointReactance: columnOver(feed, "ohm", (z) => z.im),
    },
  };
}

const inch = 0.0254;

/** Column names by the ends: one for both where they are alike. */
export const columnsOfEnds = (ends: readonly TrimEnd[]): { readonly name: string; readonly end: TrimEnd }[] => {
  const names = ends.length === 1 ? ["changeAtEachEnd"] : ["changeOfFirstLeg", "changeOfSecondLeg"];
  return ends.map((end, i) => ({ name: names[i]!, end }));
};

/** Negative is cut, positive is added. */
export function ladderTable(rungs: readonly Rung[], ends: readonly TrimEnd[]): Table {
  const columns: Record<string, Column> = {
    measuredLowest: { unit: "MHz", values: rungs.map((r) => r.dip / 1e6) },
  };
  for (const { name, end } of columnsOfEnds(ends)) {
    columns[name] = { unit: "cm", values: rungs.map((r) => 100 * r.change * end.share) };
    columns[`${name}InInches`] = { unit: "in", values: rungs.map((r) => (r.change * end.share) / inch) };
  }
  return { name: "ladder", axis: "measuredLowest", columns };
}
