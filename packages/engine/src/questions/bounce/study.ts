/** All that is worked out of one line: its echoes, its film, and the same with other sources. */
import { constantsOf } from "../../chain/edges";
import { netPower, stateAt } from "../../lines/alongLine";
import { type LineConstants, matchedLoss } from "../../lines/lineConstants";
import { swr } from "../../lines/reflection";
import { add, type Complex, complex, divide, magnitude, multiply, scale } from "../../numerics/complex";
import { type EchoLattice, echoesToSettle, echoLattice, sourceVoltage, sumOfWaves } from "../../pulses/echoes";
import { type Film, film, type Moment } from "../../pulses/film";
import { oneReactance } from "../../pulses/resonator";
import { bendExactAt, type SteppedLine, steppedLine } from "../../pulses/steppedLine";
import { emfOf } from "./emf";
import type { LineLooked } from "./lineLooked";
import { type BounceAsked, lowOver, type SourceWord } from "./parameters";
import { type FilmPlan, filmPlan, mostWaves } from "./plan";

/** Share of the final waves within which they stay for good. */
export const settledWithin = 0.01;
export const mostEchoes = 200;

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

export interface Steady {
  readonly voltage: Complex;
  readonly current: Complex;
  readonly power: number;
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

/** Ohm of a source called by a word. */
export function wordedSource(word: SourceWord, z0: Complex): number {
  return word === "matched" ? z0.re : word === "low" ? z0.re / lowOver : z0.re * lowOver;
}

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
    lowest: frequency / (20 * Math.max(1, waves * (plan.steps / plan.sections))),
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

/** A carrier delivers the station's power into the line; a step or a pulse comes from 1 V without load. */
function scaledLattice(looked: LineLooked, asked: BounceAsked, constants: LineConstants, source: Complex): EchoLattice {
  const { length, load, powerIn, ratedPower } = looked;
  const request = { constants, length, source, load };
  if (asked.signal !== "carrier") return echoLattice({ ...request, voltage: complex(1) }, mostEchoes + 1);
  if (powerIn === null || load === null) {
    // The first wave carries the rated power into the line's own impedance.
    const wave = complex(Math.sqrt(ratedPower / divide(complex(1), constants.z0).re));
    const voltage = sourceVoltage(source, wave, divide(wave, constants.z0));
    return echoLattice({ ...request, voltage }, mostEchoes + 1);
  }
  const state = stateAt(constants, { voltage: load, current: complex(1) }, length);
  const factor = Math.sqrt(powerIn / netPower(state));
  const voltage = scale(sourceVoltage(source, state.voltage, state.current), factor);
  return echoLattice({ ...request, voltage }, mostEchoes + 1);
}

function steadyAt(lattice: EchoLattice, distance: number): Steady {
  const { voltage, current } = sumOfWaves(lattice, null, distance);
  return { voltage, current, power: netPower({ voltage, current }) };
}

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

export interface SourceCompared {
  readonly name: string;
  readonly resistance: number;
  readonly echoes: number | null;
  /** W: the first wave into the line's own impedance, and net once all is settled. */
  readonly firstWave: number;
  readonly powerIn: number;
  readonly powerOut: number;
  readonly swr: number;
}

/** The same line, load and delivered power with other sources: what changes, and what does not. */
export function otherSources(study: BounceStudy): SourceCompared[] {
  const { looked, asked, constants } = study;
  const words: SourceWord[] = ["matched", "low", "high"];
  const ohmic = words.map((word) => ({ name: word as string, source: complex(wordedSource(word, constants.z0)) }));
  const own = typeof asked.source === "number" || asked.sourceReactance !== 0;
  const all = own ? [{ name: "asked", source: study.source }, ...ohmic] : ohmic;
  return all.map(({ name, source }) => {
    const lattice = scaledLattice(looked, asked, constants, source);
    const [start, end] = [steadyAt(lattice, 0), steadyAt(lattice, looked.length)];
    return {
      name,
      resistance: source.re,
      echoes: echoesToSettle(lattice, settledWithin, mostEchoes),
      firstWave: firstWavePower(lattice),
      powerIn: start.power,
      powerOut: end.power,
      swr: swr(divide(end.voltage, end.current), constants.z0.re),
    };
  });
}

/** W that the first wave carries before any echo is home. */
export const firstWavePower = ({ waves, constants }: EchoLattice): number =>
  magnitude(waves[0]!) ** 2 * divide(complex(1), constants.z0).re;

/** W the line would take of `powerIn` if it were closed with its own impedance. */
export const matchedHeat = (study: BounceStudy): number =>
  study.start.power * (1 - 10 ** (-matchedLoss(study.constants, study.looked.length) / 10));
