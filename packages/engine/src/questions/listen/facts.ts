/** The facts the sentences of `listen` are made of. */
import type { Verdict } from "../../answer/answer";
import { megahertz } from "../../quantity/format";
import type { Band } from "../../station/station";
import type { ListenFacts } from "../../words/listen";
import { decibelsPerSUnit } from "../../words/sUnits";
import type { Numbers } from "../common/bounds";
import type { Worked } from "../common/worked";
import { linesOf, mattersFrom, span } from "./frequencies";
import type { Listening } from "./parameters";
import { unheard } from "./reception";

/** dB of signal to noise up to which the line is workable: about the least step that listeners notice, and a half more. Our rule. */
export const workableUpTo = 1.5;

export const verdictOf = (cost: number): Verdict =>
  cost < unheard ? "good" : cost < workableUpTo ? "workable" : "trouble";

const whereOf = (band: Band): string => (band.name === "" ? megahertz(band.frequency.value) : band.name);

export function listenFacts(worked: Worked, listening: Listening, rows: readonly (Numbers | null)[]): ListenFacts {
  const { station, band, point, numbers, bounds } = worked;
  const lines = linesOf(point);
  return {
    where: whereOf(band),
    named: band.name !== "",
    frequency: worked.frequency,
    line: nameOfPath(worked, lines.length),
    verdict: verdictOf(numbers.snrLossByLine!),
    cost: numbers.snrLossByLine!,
    pathLoss: Math.max(0, numbers.pathLoss!),
    antennaLoss: numbers.antennaLoss!,
    external: numbers.externalNoise!,
    behind: numbers.receiverNoiseAtAntenna!,
    noise: {
      dBm: numbers.noiseAtReceiver!,
      sUnits: numbers.noiseOnMeter!,
      low: bounds.low.noiseOnMeter!,
      high: bounds.high.noiseOnMeter!,
      bandwidth: listening.bandwidth,
    },
    seen: listening.seen === null ? null : { reading: listening.seen, above: aboveExpected(worked, listening.seen) },
    rise: numbers.noiseRise!,
    riseNeeded: numbers.noiseRiseNeeded ?? null,
    place: listening.place,
    placeKnown: listening.places.length === 1,
    preamplifier: { shack: numbers.wonByPreamplifierInShack!, antenna: numbers.wonByPreamplifierAtAntenna! },
    mattersFrom: mattersFrom(listening, point),
    span,
    worst: worstOf(station.bands, band, rows),
    unheard,
  };
}

/** dB of a reading over what is expected; 6 dB an S-unit. */
const aboveExpected = ({ numbers }: Worked, reading: number): number =>
  decibelsPerSUnit * (reading - numbers.noiseOnMeter!);

/** Lines below this share of the path's heat do not speak for it. */
const mostly = 0.9;

/** What lies between antenna and receiver, in a sentence. */
function nameOfPath({ numbers }: Worked, lines: number): ListenFacts["line"] {
  if (lines === 0 || numbers.heatInLines! < mostly * numbers.heatInPath!) return { name: "the path", several: false };
  return { name: lines > 1 ? "the lines" : "the line", several: lines > 1 };
}

function worstOf(bands: readonly Band[], asked: Band, rows: readonly (Numbers | null)[]): ListenFacts["worst"] {
  const costs = bands.flatMap((band, i) => {
    const cost = rows[i]?.snrLossByLine ?? null;
    return band === asked || cost === null ? [] : [{ where: whereOf(band), cost }];
  });
  return costs.reduce<ListenFacts["worst"]>((a, b) => (a === null || b.cost > a.cost ? b : a), null);
}
