/** The same station with a perfect choke at its feed, and with no choke at all: what the outside of the line changes. */
import type { OutsideLine } from "../../antenna/outside/outsideLine";
import { type Complex, complex } from "../../numerics/complex";
import type { Station } from "../../station/station";
import type { Aim } from "../common/aim";
import { gainAt, stationNumbers } from "../common/stationNumbers";
import { withImpedances } from "./chokes";
import { type Probed, probedStation } from "./probedStation";
import { type Asked, isOutside, type OutsideState, workOutside } from "./state";

/** Ohm: next to nothing passes it, and the equations keep their figures. */
const perfect = complex(1e8);
const none = complex(0);

export interface Case {
  readonly state: OutsideState;
  /** By the names of `values`. */
  readonly numbers: Readonly<Record<string, number | null>>;
  readonly feedPoint: Complex;
  /** dBi at the angle looked at. */
  readonly gain: number;
}

export interface Compared {
  readonly probed: Probed;
  /** Probes that no other part at their joint blocks already. */
  readonly places: readonly ProbedPlace[];
  readonly perfect: Case | null;
  readonly none: Case | null;
}

export interface ProbedPlace {
  readonly probe: string;
  readonly distance: number;
  /** Chokes of the file at the same joint. */
  readonly chokes: readonly string[];
}

/** `againstLine`: the outside is the return of the antenna, and a perfect choke at the feed would leave it none. */
export function compareOutside(
  station: Station,
  asked: Asked,
  { run, aim, againstLine }: { readonly run: OutsideLine; readonly aim: Aim; readonly againstLine: boolean },
): Compared {
  const probed = probedStation(station, run);
  const feedProbe = probed.probes.at(-1)!;
  const bare = workOutside(
    withImpedances(probed.station, () => none),
    asked,
  );
  const shut = againstLine
    ? null
    : workOutside(
        withImpedances(probed.station, (name) => (name === feedProbe ? perfect : null)),
        asked,
      );
  return {
    probed,
    places: isOutside(bare) ? placesOf(bare, probed.probes) : [],
    perfect: shut && isOutside(shut) ? caseOf(shut, aim) : null,
    none: isOutside(bare) ? caseOf(bare, aim) : null,
  };
}

function caseOf(state: OutsideState, aim: Aim): Case {
  const { numbers, driven } = stationNumbers(state.point);
  const feed = state.point.joints.find((j) => j.name.startsWith("feed point"))!;
  return { state, numbers, feedPoint: feed.impedance, gain: gainAt(driven, aim.elevation, aim.azimuth) };
}

function placesOf({ run }: OutsideState, probes: readonly string[]): ProbedPlace[] {
  return run.chokes.flatMap(({ names, distance, impedances }) => {
    const probe = names.find((name) => probes.includes(name));
    if (probe === undefined || impedances.includes(null)) return [];
    return [{ probe, distance, chokes: names.filter((name) => !probes.includes(name)) }];
  });
}

/** The probed station with a choke of this impedance at one place; the file's chokes as they are, those there replaced. */
export const withChokeAt = (probed: Probed, place: ProbedPlace, impedance: Complex): Station =>
  withImpedances(probed.station, (name) =>
    name === place.probe ? impedance : place.chokes.includes(name) ? none : null,
  );

/** The same with every choke of the file taken out. */
export const withOnlyChokeAt = (probed: Probed, place: ProbedPlace, impedance: Complex): Station =>
  withImpedances(probed.station, (name) => (name === place.probe ? impedance : none));
