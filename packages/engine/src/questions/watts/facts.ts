/** The facts the sentences of `watts` are made of. */
import type { Verdict } from "../../answer/answer";
import { ohms } from "../../quantity/format";
import { shareOut } from "../../quantity/shareOut";
import type { Taker, WattsFacts } from "../../words/watts";
import { toDecibels } from "../common/stationNumbers";
import type { Worked } from "../common/worked";

export function wattsFacts(
  worked: Worked,
  limits: { readonly goodUpTo: number; readonly workableUpTo: number },
): WattsFacts {
  const { point, numbers } = worked;
  const radiated = numbers.radiatedPower!;
  const totalLoss = toDecibels(point.ratedPower / radiated);
  const verdict: Verdict =
    totalLoss <= limits.goodUpTo ? "good" : totalLoss <= limits.workableUpTo ? "workable" : "trouble";
  const takers = takersOf(worked);
  const decimals = point.powerFromTransmitter < 20 ? 1 : 0;
  const rounded = shareOut([radiated, ...takers.map((t) => t.watts)], point.powerFromTransmitter, decimals);
  return {
    rated: point.ratedPower,
    delivered: point.powerFromTransmitter,
    radiated,
    radiatedRounded: rounded[0]!,
    takers: takers.map((t, i) => ({ ...t, rounded: rounded[i + 1]! })),
    totalLoss,
    verdict,
    swrAtTransmitter: point.swrAtTransmitter,
    addedByMismatch: numbers.heatAddedByMismatch ?? 0,
    heatInLines: numbers.heatInLines ?? 0,
    onRadials: worked.station.antennas.some((a) => a.radials !== null && point.resolved.feedsInUse.includes(a.name)),
    tuner: point.tuner && { name: point.tuner.name, impedance: ohms(point.tuner.impedance, 0) },
  };
}

/** Everything that takes power, largest first. Lines count as one: they are read as "the line". */
function takersOf(worked: Worked): Omit<Taker, "rounded">[] {
  const { point, numbers } = worked;
  const lines = numbers.heatInLines ?? 0;
  const others = point.parts.filter((p) => p.edge.part?.kind !== "line" && p.heat > 0);
  const several = point.parts.filter((p) => p.edge.part?.kind === "line" && p.edge.inUse).length > 1;
  const takers: Omit<Taker, "rounded">[] = [
    { kind: "soil", name: "the soil", several: false, watts: numbers.heatInSoil ?? 0, value: "heatInSoil" },
    { kind: "line", name: several ? "the lines" : "the line", several, watts: lines, value: "heatInLines" },
    { kind: "wires", name: "the wires", several: true, watts: numbers.heatInWires ?? 0, value: "heatInWires" },
    ...others.map((p) => ({
      kind: "part" as const,
      name: p.edge.name,
      several: false,
      watts: p.heat,
      value: "heatInPath",
    })),
  ];
  return takers.filter((t) => t.watts > 0).sort((a, b) => b.watts - a.watts);
}
