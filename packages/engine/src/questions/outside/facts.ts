/** The facts the sentences of `outside` are made of. */
import type { Verdict } from "../../answer/answer";
import { add, type Complex, complex, magnitude } from "../../numerics/complex";
import { speedOfLight } from "../../numerics/vacuum";
import { ohms } from "../../quantity/format";
import {
  type CaseFacts,
  type ChokeFacts,
  goodShare,
  type OutsideFacts,
  type PlaceFacts,
  workableShare,
} from "../../words/outside";
import { nameInSentence } from "../common/inUse";
import type { Worked } from "../common/worked";
import type { BandPoint } from "./bands";
import type { ChokeStudy, PlaceResult } from "./chokeStudy";
import type { Case, Compared } from "./comparison";
import type { LengthStudy } from "./lengthStudy";
import type { ShackEnd } from "./shackEnd";
import type { OutsideState } from "./state";

export interface Found {
  readonly state: OutsideState;
  readonly againstLine: boolean;
  readonly share: number;
  /** dBi at the angle looked at, and the largest as a factor. */
  readonly gain: number;
  readonly strongestGain: number;
  readonly compared: Compared;
  readonly places: readonly PlaceResult[];
  readonly study: ChokeStudy | null;
  readonly tried: Complex;
  readonly lengths: LengthStudy | null;
  readonly bands: readonly BandPoint[];
  readonly end: ShackEnd;
}

export function outsideFacts(worked: Worked, found: Found): OutsideFacts {
  const { state, compared, study } = found;
  const chokes = chokeFacts(worked, state);
  return {
    verdict: verdictOf(found.share, chokes),
    share: found.share,
    largest: state.largest,
    house: { current: state.house.current, share: state.house.current / state.antennaCurrent },
    feedCurrent: state.feedCurrent,
    antennaCurrent: state.antennaCurrent,
    length: state.run.length,
    wave: speedOfLight / worked.frequency,
    againstLine: found.againstLine,
    earthed: state.run.earthed,
    endVolts: found.end.volts,
    chokes,
    idle: idleChokes(worked, state),
    asIs: {
      share: found.share,
      swr: worked.point.swrAtTransmitter,
      radiated: worked.numbers.radiatedPower!,
      gain: found.gain,
    },
    perfect: compared.perfect && caseFacts(compared.perfect, found.againstLine),
    none: compared.none && caseFacts(compared.none, found.againstLine),
    study: study && {
      distance: study.place.distance,
      bare: study.bare,
      ohmsNeeded: study.ohmsNeeded,
      worst: study.worst,
      present: study.place.chokes.length > 0,
    },
    places: found.places.map(
      (p): PlaceFacts => ({ distance: p.place.distance, share: p.share, ohmsNeeded: p.ohmsNeeded }),
    ),
    tried: ohms(found.tried, 0).replace(/ \+ j0 Ω$/, " Ω"),
    worstLength: found.lengths?.worst ?? null,
    bands: found.bands.map(({ band, share, current }) => ({ name: band.name, share, current })),
    noise: {
      share: state.house.current / state.feedCurrent,
      perfectShare: compared.perfect && compared.perfect.state.house.current / compared.perfect.state.feedCurrent,
    },
  };
}

/** The share that is judged: the largest on the whole run, near the house where the line is the antenna's own return. */
export const judgedShare = (state: OutsideState, againstLine: boolean): number =>
  (againstLine ? state.house.current : state.largest.current) / state.antennaCurrent;

const caseFacts = ({ state, numbers, gain }: Case, againstLine: boolean): CaseFacts => ({
  share: judgedShare(state, againstLine),
  swr: state.point.swrAtTransmitter,
  radiated: numbers.radiatedPower!,
  gain,
});

function verdictOf(share: number, chokes: readonly ChokeFacts[]): Verdict {
  if (share > workableShare || chokes.some((c) => c.limit !== null && c.mean > c.limit)) return "trouble";
  return share > goodShare ? "workable" : "good";
}

/** Chokes in use before the first line of a run whose end floats. */
function idleChokes({ point }: Worked, { run }: OutsideState): string[] {
  if (run.earthed !== null) return [];
  const used = point.parts.filter((p) => p.edge.inUse);
  const start = used.findIndex((p) => p.edge.name === run.lines[0]);
  return used.slice(0, start).flatMap(({ edge }) => (edge.kind === "choke" ? [nameInSentence(point, edge.name)] : []));
}

/** Mean while sending and over the averaging time, against peak envelope power. */
export const onAirShare = ({ station: { transmitter } }: Worked): number =>
  transmitter.duty.value * (transmitter.onAir ? transmitter.onAir.on / transmitter.onAir.of : 1);

/** Every part that chokes the run: parts at one joint share its heat by their resistances. */
function chokeFacts(worked: Worked, state: OutsideState): ChokeFacts[] {
  const { point, driven, run } = state;
  const w = 2 * Math.PI * point.frequency;
  const scale = point.powerIntoAntenna / driven.powerIn;
  return run.chokes.flatMap(({ names, gap, distance, impedances, heatLimits }) => {
    const port = point.antenna.build.structure.feeds.length + gap;
    const all = impedances.map((z) => z?.(w) ?? null);
    const total = all.reduce<Complex>((sum, z) => (z ? add(sum, z) : sum), complex(0));
    return names.map((name, i): ChokeFacts => {
      const part = all[i] ?? null;
      const shareOfHeat = part && total.re > 0 ? part.re / total.re : 0;
      const heat = driven.closingHeat[gap]! * scale * shareOfHeat;
      return {
        name: nameInSentence(point, name),
        impedance: part ? ohms(part, 0) : "",
        distance,
        current: magnitude(driven.portCurrents[port]!),
        heat,
        mean: heat * onAirShare(worked),
        limit: heatLimits[i] ?? null,
      };
    });
  });
}
