/** All that is worked out of one line: its echoes and its film. */
import { constantsOf } from "../../chain/edges";
import { type LineConstants, matchedLoss } from "../../lines/lineConstants";
import { add, type Complex, complex, divide, magnitude, multiply } from "../../numerics/complex";
import { type EchoLattice, echoesToSettle } from "../../pulses/echoes";
import { type Film, film, type Moment } from "../../pulses/film";
import { oneReactance } from "../../pulses/resonator";
import { bendExactAt, type SteppedLine, steppedLine } from "../../pulses/steppedLine";
import { emfOf } from "./emf";
import type { LineLooked } from "./looked";
import type { BounceAsked } from "./parameters";
import { type FilmPlan, filmPlan, mostWaves } from "./plan";
import { mostEchoes, type Steady, scaledLattice, settledWithin, steadyAt, wordedSource } from "./scaled";

export interface BounceStudy {
  readonly asked: BounceAsked;
  readonly looked: LineLooked;
  readonly frequency: number;
  readonly constants: LineConstants;
  readonly source: Complex;
  readonly lattice: EchoLattice;
  readonly echoes: number | null;
  /** Rms phasors once all is settled, at both ends. */
  readonly start: Steady;
  readonly end: Steady;
  readonly waves: number;
  readonly stepped: SteppedLine;
  readonly plan: FilmPlan;
  readonly film: Film;
  readonly moments: readonly ShownMoment[];
  /** One way, s. */
  readonly delay: number;
}

/** A moment as it is shown; volts and amperes at the places of the plan. */
export interface ShownMoment extends Pick<Moment, "step" | "energy"> {
  readonly forward: Float64Array;
  readonly reflected: Float64Array;
  readonly voltage: Float64Array;
  readonly current: Float64Array;
}

export interface TooManyWaves {
  readonly waves: number;
}

/**
 * Hz between which the loss is fitted: a carrier's waves lie about its frequency, its start a few octaves beside it; a step has
 * all frequencies down to the length of time looked at. `periods` looked at.
 */
const lossSpan = (signal: BounceAsked["signal"], frequency: number, periods: number) =>
  signal === "carrier"
    ? { lowest: frequency / 20, highest: 5 * frequency }
    : { lowest: frequency / (20 * Math.max(1, periods)) };

export function bounceStudy(looked: LineLooked, asked: BounceAsked, frequency: number): BounceStudy | TooManyWaves {
  const constants = constantsOf(looked.part, frequency);
  const { length } = looked;
  const waves = (constants.gamma.im * length) / (2 * Math.PI);
  if (asked.signal === "carrier" && waves > mostWaves) return { waves };
  const resistance = typeof asked.source === "number" ? asked.source : wordedSource(asked.source, constants.z0);
  const source = complex(resistance, asked.sourceReactance);
  const lattice = scaledLattice(looked, asked, constants, source);
  const echoes = echoesToSettle(lattice, settledWithin, mostEchoes);
  const start = steadyAt(lattice, 0);
  const end = steadyAt(lattice, length);
  const plan = filmPlan(asked.signal, waves, echoes ?? mostEchoes, ringing(looked, waves));
  const stepped = steppedLine({
    constantsAt: (f) => constantsOf(looked.part, f),
    length,
    frequency,
    sections: plan.sections,
    ...lossSpan(asked.signal, frequency, waves * (plan.steps / plan.sections)),
  });
  const { film: made, moments } = shown({ looked, asked, source, lattice, stepped, plan, frequency, waves });
  const delay = stepped.timeStep * stepped.sections;
  return {
    ...{ asked, looked, frequency, constants, source, lattice, echoes, start, end, waves, stepped, plan },
    film: made,
    moments,
    delay,
  };
}

/** Passes of the line in which a load that rings settles: Q over pi periods for a factor of e. */
const ringing = ({ fit }: LineLooked, waves: number): number =>
  (-Math.log(settledWithin) * (fit?.quality ?? 0)) / Math.PI / Math.max(waves, 1e-3);

interface FilmWanted
  extends Pick<BounceStudy, "looked" | "asked" | "source" | "lattice" | "stepped" | "plan" | "frequency" | "waves"> {}

function shown(wanted: FilmWanted): { readonly film: Film; readonly moments: readonly ShownMoment[] } {
  const { looked, asked, source, lattice, stepped, plan, frequency } = wanted;
  const omega = 2 * Math.PI * frequency;
  // Volts of the source without load: what the first wave needs.
  const { z0 } = lattice.constants;
  const emf = magnitude(divide(multiply(lattice.waves[0]!, add(source, z0)), z0));
  const run = (quarter: number): Film =>
    film({
      line: stepped,
      source: oneReactance(source, omega),
      load: looked.termination,
      voltage: emfOf(asked.signal, {
        steps: plan.steps,
        timeStep: stepped.timeStep,
        sections: plan.sections,
        frequency,
        emf,
        quarter,
        softly: plan.shows === "sizes",
      }),
      bend: bendExactAt(omega, stepped.timeStep),
      moments: plan.moments,
      places: plan.places,
    });
  const made = run(0);
  const z = stepped.surgeImpedance;
  const plain = made.moments.map((m) => withSums(m, z));
  if (plan.shows === "waves") return { film: made, moments: plain };
  // A quarter of a period apart, two films tell how large a wave swings: root of the sum of squares.
  const other = run(1).moments.map((m) => withSums(m, z));
  const size = (a: Float64Array, b: Float64Array) => a.map((x, i) => Math.hypot(x, b[i]!));
  const moments = plain.map((m, i) => ({
    ...m,
    forward: size(m.forward, other[i]!.forward),
    reflected: size(m.reflected, other[i]!.reflected),
    voltage: size(m.voltage, other[i]!.voltage),
    current: size(m.current, other[i]!.current),
  }));
  return { film: made, moments };
}

const withSums = ({ step, energy, forward, reflected }: Moment, z: number): ShownMoment => ({
  step,
  energy,
  forward,
  reflected,
  voltage: forward.map((f, i) => f + reflected[i]!),
  current: forward.map((f, i) => (f - reflected[i]!) / z),
});

/** W the line would take of `powerIn` if it were closed with its own impedance. */
export const matchedHeat = (study: BounceStudy): number =>
  study.start.power * (1 - 10 ** (-matchedLoss(study.constants, study.looked.length) / 10));
