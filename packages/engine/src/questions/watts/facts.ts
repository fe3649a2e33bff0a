/** The facts the sentences of `watts` are made of. */
import type { Verdict } from "../../answer/answer";
import { constantsOf } from "../../chain/edges";
import type { ResolvedEdge } from "../../chain/resolve";
import { swr } from "../../lines/reflection";
import { ohms } from "../../quantity/format";
import { shareOut } from "../../quantity/shareOut";
import { theName } from "../../words/phrases";
import type { ReturnSide, Taker, WattsFacts } from "../../words/watts";
import { antennaHeatSays, loadsName } from "../common/antennaHeat";
import { antennasInUse, nameInSentence } from "../common/inUse";
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
  const rounded = shareOut(
    [radiated, ...takers.map((t) => t.watts)],
    point.powerFromTransmitter,
    decimalsFor(point.powerFromTransmitter),
  );
  return {
    rated: point.ratedPower,
    delivered: point.powerFromTransmitter,
    radiated,
    radiatedRounded: rounded[0]!,
    takers: takers.map((t, i) => ({ ...t, rounded: rounded[i + 1]! })),
    totalLoss,
    verdict,
    swrAtTransmitter: point.swrAtTransmitter,
    swrAtFeedPoint: numbers.swrAtFeedPoint ?? point.swrAtTransmitter,
    addedByMismatch: numbers.heatAddedByMismatch ?? 0,
    heatInLines: numbers.heatInLines ?? 0,
    returnSide: returnSideOf(worked),
    loads: loadsOf(worked),
    tuner: point.tuner && {
      name: nameInSentence(point, point.tuner.name),
      impedance: ohms(point.tuner.impedance, 0),
      behind: behindTuner(worked, point.tuner.name),
    },
  };
}

/** Decimals of watts as told: whole from 20 W, one from 2 W, thousandths below a watt, where milliwatts are told. */
const decimalsFor = (power: number): number => (power >= 20 ? 0 : power >= 0.95 ? 1 : 3);

function loadsOf({ station, point }: Worked): string {
  if (point.antenna.build.loops.length > 0) return "capacitor";
  return loadsName(antennasInUse(station, point).flatMap((a) => a.loads.filter((load) => load.kind !== "hat")));
}

function returnSideOf(worked: Worked): ReturnSide {
  const used = antennasInUse(worked.station, worked.point);
  if (used.some((a) => a.radials !== null)) return "radials";
  if (used.some((a) => a.against === "outside of the line")) return "line";
  return used.some((a) => a.against !== null) ? "nearby" : "itself";
}

/** Several connectors of one entry are told as "the connectors". */
function partInSentence(worked: Worked, { name, part }: ResolvedEdge): Pick<Taker, "name" | "several"> {
  const plain = theName(nameInSentence(worked.point, name));
  const several = part?.kind === "connector" && part.count > 1 && plain === "the connector";
  return { name: several ? "the connectors" : plain, several };
}

/** Lines between the tuner and the antenna; null where the tuner comes last. */
function behindTuner({ point, frequency }: Worked, name: string) {
  const used = point.parts.filter((p) => p.edge.inUse);
  const lines = used.slice(used.findIndex((p) => p.edge.name === name) + 1).filter((p) => p.matchedLoss !== null);
  if (lines.length === 0) return null;
  const heat = lines.reduce((sum, p) => sum + p.heat, 0);
  const matched = lines.reduce((sum, p) => sum + p.powerIn * (1 - 10 ** (-(p.matchedLoss ?? 0) / 10)), 0);
  const standing = lines.map((p) => {
    const load = point.joints.find((j) => j.name === p.to);
    if (p.edge.part?.kind !== "line" || !load) return 1;
    const { z0 } = constantsOf(p.edge.part, frequency);
    return swr(load.impedance, z0.re);
  });
  return { heat, added: heat - matched, swr: Math.max(...standing) };
}

/** What takes most of the heat in wires. */
const mostOf = (
  wires: number,
  chokes = 0 as number | null,
  loads = 0 as number | null,
): "chokes" | "loads" | "wires" =>
  (chokes ?? 0) > 0.5 * wires ? "chokes" : (loads ?? 0) > 0.5 * wires ? "loads" : "wires";

/** Everything that takes power, largest first. Lines count as one: they are read as "the line". */
function takersOf(worked: Worked): Omit<Taker, "rounded">[] {
  const { point, numbers } = worked;
  const lines = numbers.heatInLines ?? 0;
  const wires = numbers.heatInWires ?? 0;
  const others = point.parts.filter((p) => p.edge.part?.kind !== "line" && p.heat > 0);
  const several = point.parts.filter((p) => p.edge.part?.kind === "line" && p.edge.inUse).length > 1;
  const takers: Omit<Taker, "rounded">[] = [
    { kind: "soil", name: "the soil", several: false, watts: numbers.heatInSoil ?? 0, value: "heatInSoil" },
    { kind: "line", name: several ? "the lines" : "the line", several, watts: lines, value: "heatInLines" },
    {
      kind: mostOf(wires, numbers.heatInChokes, numbers.heatInLoads),
      name: `the ${antennaHeatSays(worked)}`,
      several: true,
      watts: wires,
      value: "heatInWires",
    },
    ...others.map((p) => ({
      kind: "part" as const,
      ...partInSentence(worked, p.edge),
      watts: p.heat,
      value: "heatInPath",
    })),
  ];
  return takers.filter((t) => t.watts > 0).sort((a, b) => b.watts - a.watts);
}
