/** Headline, verdict and advice of `listen`. English. */
import type { Phrase, RuleOfThumb, Verdict } from "../answer/answer";
import { decibels, fixedNumber, megahertz, plainNumber } from "../quantity/format";
import { asking } from "./asking";
import { linked, said } from "./phrases";

export interface ListenFacts {
  /** "40 m", or "7.1 MHz" where the band has no name. */
  readonly where: string;
  readonly named: boolean;
  readonly frequency: number;
  /** "the line", "the lines", "the path": what lies between antenna and receiver. */
  readonly line: { readonly name: string; readonly several: boolean };
  readonly verdict: Verdict;
  /** dB. */
  readonly cost: number;
  readonly pathLoss: number;
  readonly antennaLoss: number;
  readonly external: number;
  readonly behind: number;
  readonly noise: {
    readonly dBm: number;
    readonly sUnits: number;
    readonly low: number;
    readonly high: number;
    readonly bandwidth: number;
  };
  /** S-units that the asker reads, and dB over what is expected; null where nothing is said. */
  readonly seen: { readonly reading: number; readonly above: number } | null;
  readonly rise: number;
  readonly riseNeeded: number | null;
  readonly place: string;
  readonly placeKnown: boolean;
  readonly preamplifier: { readonly shack: number; readonly antenna: number };
  /** Hz; null: nowhere up to the end of the span. */
  readonly mattersFrom: number | null;
  readonly span: { readonly from: number; readonly to: number };
  /** The station's band on which the line costs most, where that is another one. */
  readonly worst: { readonly where: string; readonly cost: number } | null;
  /** dB up to which a cost counts as unheard. */
  readonly unheard: number;
}

/** dB: two decimals where there is less than a tenth to tell, and "less than 0.01 dB" below that. */
const small = (x: number): string => (x < 0.005 ? "less than 0.01 dB" : decibels(x));
/** One decimal at most, for the headline. */
const short = (x: number): string => `${plainNumber(x, 1)} dB`;

const at = (f: ListenFacts): string => (f.named ? `On ${f.where}` : `At ${f.where}`);
const verb = ({ line }: ListenFacts, one: string, many: string): string => (line.several ? many : one);

export function listenHeadline(f: ListenFacts): Phrase[] {
  const start = `${at(f)} ${f.line.name} ${verb(f, "costs", "cost")}`;
  if (f.cost < 0.095) return [said(`${start} you `), linked("nothing you can hear", "snrLossByLine"), said(".")];
  return [said(`${start} `), linked(short(f.cost), "snrLossByLine"), said(" against the noise.")];
}

/** "S7", "S9 + 12 dB". */
export function sMeter(units: number): string {
  const over = 6 * (units - 9);
  if (over >= 0.5) return `S9 + ${plainNumber(over, 0)} dB`;
  return `S${plainNumber(Math.max(0, Math.round(units)), 0)}`;
}

/** dB from which noise is far more than other noise. */
const farMore = 10;

export function listenVerdict(f: ListenFacts): Phrase[] {
  const { name } = f.line;
  const takes = `${name.charAt(0).toUpperCase()}${name.slice(1)} ${verb(f, "takes", "take")} `;
  const over = f.external - f.behind;
  const comes = over < 0 ? "less noise comes in" : over < farMore ? "more noise comes in" : "far more noise comes in";
  const why =
    Math.abs(over) < 3
      ? "about as much noise comes in by the antenna as receiver and line make"
      : `${comes} by the antenna than receiver and line make`;
  return [
    said(takes),
    linked(small(f.pathLoss), "pathLoss"),
    said(" of the signal, and as much of the noise from outside; signal over noise falls by "),
    linked(small(f.cost), "snrLossByLine"),
    said(`, because ${why}. Expect noise of `),
    linked(sMeter(f.noise.sUnits), "noiseOnMeter"),
    said(`${noiseRange(f)}.`),
    ...seenPhrases(f),
    said(` ${listenAdvice(f)}`),
  ];
}

/** " in a rural place (S3 to S6)". */
function noiseRange({ noise, place, placeKnown }: ListenFacts): string {
  const [low, high] = [sMeter(noise.low), sMeter(noise.high)];
  const range = low === high ? "" : ` (${low} to ${high}${placeKnown ? "" : ", from quiet country to city"})`;
  return ` in a ${place} place${range}`;
}

/** What the reading on the asker's meter says of the place. */
function seenPhrases(f: ListenFacts): Phrase[] {
  if (!f.seen) return [];
  const { reading, above } = f.seen;
  const fits = ` Your ${sMeter(reading)} fits such a place.`;
  if (reading <= f.noise.high && reading >= f.noise.low) return [said(fits)];
  const far = linked(`${plainNumber(Math.abs(above), 0)} dB`, "noiseAboveExpected");
  if (above < 0)
    return [
      said(` Your ${sMeter(reading)} is `),
      far,
      said(" below that: the meter, or something on the way, takes some."),
    ];
  return [
    said(` Your ${sMeter(reading)} is `),
    far,
    said(" above that: something near by makes it, or the outside of the line carries it in."),
  ];
}

/** More noise than the place explains. */
const tooMuch = (f: ListenFacts): boolean => f.seen !== null && f.seen.reading > f.noise.high;

/** A preamplifier that wins less than this (dB) is not worth its plugs: our rule. */
const worthwhile = 1;

/** The one thing to do, also when that is nothing. */
export function listenAdvice(f: ListenFacts): string {
  const { shack, antenna } = f.preamplifier;
  if (tooMuch(f)) return "Switch off the mains and listen on a battery; then put a choke at the feed point.";
  if (f.cost >= f.unheard && antenna >= worthwhile) {
    if (antenna - shack < 0.5) return `A preamplifier in the shack wins ${short(shack)}; at the antenna hardly more.`;
    return `A preamplifier at the antenna wins ${short(antenna)}; in the shack it wins ${short(Math.max(0, shack))}.`;
  }
  if (f.cost >= f.unheard) return `A line of less loss wins at most ${short(f.cost)}.`;
  if (f.worst && f.worst.cost >= f.unheard)
    return `Leave it for this band; on ${f.worst.where} it costs ${short(f.worst.cost)}.`;
  if (antenna >= worthwhile && shack >= worthwhile)
    return `Leave the line; a preamplifier in the shack wins ${short(shack)}.`;
  return "Leave the line as it is; to hear more, look for what makes noise near by.";
}

export const listenReason = (f: ListenFacts): string =>
  `${small(f.cost)} of signal to noise are what a line without loss would win ${f.named ? "on" : "at"} ${f.where}`;

/** What to try tonight; null where no reading could show that the line matters. */
export function listenTest(f: ListenFacts): string | null {
  if (f.riseNeeded === null) return null;
  return `Change the antenna for a dummy load at the receiver: if the noise falls by ${plainNumber(f.riseNeeded, 1)} dB or more, the line costs less than ${f.unheard} dB; expected is a fall of ${plainNumber(f.rise, 0)} dB.`;
}

export function listenRules(f: ListenFacts): RuleOfThumb[] {
  const from = f.mattersFrom;
  const end = megahertz(f.span.to, 0);
  return [
    {
      rule: "below 30 MHz the loss of a line does not matter for listening",
      ruleValue: "30 MHz",
      computed:
        from === null
          ? `nowhere up to ${end}`
          : from <= f.span.from
            ? `from ${megahertz(f.span.from, 1)} on`
            : `from ${megahertz(from, 0)} on`,
      holds: `for this line into a matched antenna without loss, in a ${f.place} place, ${f.unheard} dB as the limit`,
      source: "common practice, no source",
    },
    {
      rule: "a preamplifier belongs to the antenna, not to the set",
      ruleValue: "always",
      computed: `${fixedNumber(f.preamplifier.antenna, 1)} dB at the antenna, ${fixedNumber(f.preamplifier.shack, 1)} dB in the shack`,
      holds: "where the line takes decibels and little noise comes from outside",
      source: "common practice, no source",
    },
  ];
}

export const listenCautions = (f: ListenFacts): string[] => [
  "A preamplifier at the antenna must be switched out before sending, or the transmitter destroys it. Strong stations near by can overload it: gain helps nothing against that.",
  ...(f.noise.sUnits >= 9
    ? [
        `Noise of ${sMeter(f.noise.sUnits)} stands on the band already: a preamplifier raises it together with the signals.`,
      ]
    : []),
];

export const listenNotCovered = (f: ListenFacts): string[] => [
  ...(f.frequency < 30e6
    ? [
        "Not computed: atmospheric noise, from lightning far away. ITU-R P.372 has it as maps for seasons and hours, about 10 to 100 dB at 1 MHz (from memory). With it the line matters even less.",
      ]
    : []),
  ...(f.frequency < 10e6
    ? [
        "Galactic noise is left out below 10 MHz: the F2 layer mostly holds it off below its critical frequency, which changes from 3 to 12 MHz with hour and season.",
      ]
    : []),
  "ITU-R P.372 gives its formulas for man-made noise up to 250 MHz (in quiet rural places to 30 MHz) and for galactic noise from 10 to 100 MHz; above, their lines are carried on.",
  "The noise is that of places of one kind, come from all of the sky alike: one bad power supply next door is not in it.",
  `Not computed: noise that the outside of the line carries to the antenna. A choke at the feed point tells it apart; ask ${asking("outside")}.`,
  ...(f.seen
    ? [
        "The step of an S-meter is taken as 6 dB from S9 down; many sets show less for a step, and so too much noise when it is weak (common practice, no source).",
      ]
    : []),
  "The receiver's noise figure is taken as that at its rated impedance; a receiver far from its match may have another.",
];

export const beyondNoise =
  "the noise from outside is known from 0.3 MHz to 1 GHz (ITU-R P.372, carried on above its formulas)";
export const withinNoise = "a band between them";
