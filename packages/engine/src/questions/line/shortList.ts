/** The lines that are told first: the present one, what is proposed, the ends of the list, and some between. */
import { newOf } from "./candidates";
import { type Findings, usualCoaxial } from "./findings";
import { presentOf } from "./proposal";
import type { Ranked } from "./ranking";

/** As many as a terminal and a picture show whole. */
const most = 9;

const named = (ranked: readonly Ranked[], name: string): Ranked | null =>
  ranked.find((one) => one.candidate.entry.designation === name) ?? null;

/** In the order of the ranking. */
export function shortList({ ranked, proposal, best, cheap, bench }: Findings): Ranked[] {
  const converted = ranked.filter((one) => one.candidate.standing === "converted");
  const usual = bench.replaced.side === "balanced" ? named(converted, usualCoaxial) : null;
  const now = presentOf(ranked);
  const anew = named(ranked, newOf(now.candidate.entry.designation));
  const musts = [now, anew, proposal, best, cheap, ranked[0]!, usual ?? converted[0] ?? null];
  const chosen = new Set(musts.flatMap((one) => one ?? []));
  const others = ranked.filter((one) => one.candidate.standing !== "converted" && !chosen.has(one));
  const room = Math.max(0, most - chosen.size);
  for (let i = 0; i < Math.min(room, others.length); i++) chosen.add(others[placeOf(i, room, others.length)]!);
  return ranked.filter((one) => chosen.has(one));
}

/** At equal steps from the first to the last. */
const placeOf = (i: number, room: number, count: number): number =>
  count <= room || room === 1 ? i : Math.round((i * (count - 1)) / (room - 1));
