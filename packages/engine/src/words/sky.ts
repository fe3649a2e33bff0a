/** Headline, verdict and advice of `sky`. English. */
import type { Phrase, Verdict } from "../answer/answer";
import { decibels, metres, plainNumber, wholeWatts } from "../quantity/format";
import { asking } from "./asking";
import { linked, said } from "./phrases";
import { asSUnits } from "./sUnits";

/** Watts, dBi, degrees; hops and heights in metres. */
export interface SkyFacts {
  readonly delivered: number;
  readonly intoAntenna: number;
  readonly radiated: number;
  readonly below30: number;
  readonly above60: number;
  readonly nearMaximum: number;
  readonly strongest: { readonly elevation: number; readonly azimuth: number; readonly gain: number };
  readonly aim: {
    readonly elevation: number;
    readonly azimuth: number;
    readonly wanted: { readonly elevation: boolean; readonly direction: boolean };
    readonly gain: number;
    /** The largest gain at this elevation, and where. */
    readonly bestGain: number;
    readonly bestAzimuth: number;
  };
  /** The same all round at the elevation of the aim. */
  readonly roundabout: boolean;
  readonly reference: {
    readonly height: number;
    readonly gain: number;
    readonly maximum: number;
    readonly gainAtTen: number;
  } | null;
  readonly perfectGain: number | null;
  /** The antenna is stronger than the dipole up to this elevation. */
  readonly crossing: number | null;
  readonly uprightShare: number;
  readonly gainAtFive: number;
  readonly hops: { readonly e: number; readonly f: number } | null;
  readonly overSoil: boolean;
  readonly verdict: Verdict | null;
}

const straightUp = 85;
/** dB: half an S-unit, worth turning an antenna for. */
const worthTurning = 3;

export const angle = (degrees: number): string => `${plainNumber(degrees, 0)}°`;

/** "47° up", "straight up", "20° down". */
export const upwards = (degrees: number): string =>
  degrees >= straightUp ? "straight up" : degrees < -0.5 ? `${angle(-degrees)} down` : `${angle(degrees)} up`;

const points = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"];

/** "90° (east)". */
export function bearing(degrees: number): string {
  const round = ((Math.round(degrees) % 360) + 360) % 360;
  return `${round}° (${points[Math.round(round / 45) % 8]!})`;
}

export const told = (f: SkyFacts, watts: number): string =>
  f.delivered < 0.95 ? `${plainNumber(1000 * watts, 0)} mW` : watts < 0.005 ? "0 W" : wholeWatts(watts);

/** Metres as kilometres, to ten from a hundred on. */
export const kilometres = (m: number): string => {
  const km = m / 1000;
  return `${plainNumber(km >= 100 ? 10 * Math.round(km / 10) : km, 0)} km`;
};

export const lossOf = (f: SkyFacts): number => Math.max(0, f.strongest.gain - f.aim.gain);
/** What of it another direction at the same elevation would bring. */
export const directionLoss = (f: SkyFacts): number => f.aim.bestGain - f.aim.gain;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export function skyHeadline(f: SkyFacts): Phrase[] {
  if (f.verdict === null) {
    return [
      said("Strongest "),
      linked(upwards(f.strongest.elevation), "elevationOfMaximum"),
      said(": "),
      linked(told(f, f.below30), "radiatedBelow30"),
      said(" of "),
      linked(told(f, f.radiated), "radiatedPower"),
      said(" leave below 30°."),
    ];
  }
  const up = capital(upwards(f.aim.elevation));
  if (lossOf(f) < 0.1) return [said(`${up} it is as strong as anywhere.`)];
  const like = f.delivered * 10 ** (-lossOf(f) / 10);
  return [
    said(`${up}, ${told(f, f.delivered)} sound like `),
    linked(told(f, like), "wattsAtAim"),
    said(" in its strongest direction."),
  ];
}

export function skyVerdict(f: SkyFacts): Phrase[] {
  return [...strengthSays(f), ...dipoleSays(f), ...hopSays(f), said(skyAdvice(f))];
}

function strengthSays(f: SkyFacts): Phrase[] {
  if (f.verdict === null) {
    const high = linked(told(f, f.above60), "radiatedAbove60");
    const rest = f.roundabout ? "; all round it is the same" : "";
    return [high, said(` leave above 60°, for near stations${rest}. `)];
  }
  const loss = lossOf(f);
  if (loss < 0.1) return [];
  return [
    said("That is "),
    linked(decibels(loss), "belowMaximum"),
    said(`, ${asSUnits(loss)}, below the strongest, ${upwards(f.strongest.elevation)}. `),
  ];
}

function dipoleSays(f: SkyFacts): Phrase[] {
  if (!f.reference) return [];
  const more = f.aim.gain - f.reference.gain;
  const dipole = f.overSoil
    ? `a half-wave dipole ${metres(f.reference.height)} high over the same soil`
    : "a half-wave dipole";
  const where = `${capital(upwards(f.aim.elevation))} towards ${bearing(f.aim.azimuth)}`;
  if (Math.abs(more) < 0.25) return [said(`${where} it does what ${dipole} does. `)];
  return [
    said(`${where} it is `),
    linked(decibels(Math.abs(more)), "gainAgainstDipole"),
    said(` ${more > 0 ? "stronger" : "weaker"} than ${dipole}. `),
  ];
}

function hopSays(f: SkyFacts): Phrase[] {
  if (!f.hops) return [];
  return [
    said("By geometry a first hop at that angle ends "),
    linked(kilometres(f.hops.e), "firstHopByE"),
    said(" away by the E layer, "),
    linked(kilometres(f.hops.f), "firstHopByF"),
    said(" by the F layer. "),
  ];
}

/** A share of the power below 30 degrees under which far stations get little: our rule. */
const littleLow = 0.25;
/** From this elevation (deg) down the soil far around decides what an upright wire sends. */
const lowAngle = 15;
/** Straight up there is no upright and no level. */
const steep = 60;

export const isUpright = (f: SkyFacts): boolean => f.uprightShare > 0.5 && f.strongest.elevation < steep;

export function skyAdvice(f: SkyFacts): string {
  if (f.verdict === null) {
    if (f.overSoil && !isUpright(f) && f.below30 < littleLow * f.radiated)
      return `For far stations hang it higher (ask ${asking("height")} for how much); for near ones leave it.`;
    return "Leave it, and name the elevation or direction you want to have it judged.";
  }
  if (f.verdict === "good") return "Leave it: nothing that could be turned or raised would be heard.";
  if (directionLoss(f) > worthTurning || directionLoss(f) >= lossOf(f) / 2)
    return `Turn it: ${upwards(f.aim.elevation)} it is ${decibels(directionLoss(f))} stronger towards ${bearing(f.aim.bestAzimuth)}.`;
  if (f.aim.elevation < f.strongest.elevation)
    return !isUpright(f) || f.aim.elevation > lowAngle
      ? `Hang it higher to bring the low angles up: ask ${asking("height")} for how much.`
      : "So low, the soil far around decides: another place (wet ground, the sea) helps, more power or radials do not.";
  return !isUpright(f)
    ? `Hang it lower, or on a lower band, to bring the steep angles up: ask ${asking("height")} for how much.`
    : "An upright wire sends little steeply: hang a level wire for near stations.";
}

export const skyReason = (f: SkyFacts): string =>
  `${upwards(f.aim.elevation)} towards ${bearing(f.aim.azimuth)} it is ${decibels(lossOf(f))} below its strongest direction`;
