/** The same line with other sources. */
import { swr } from "../../lines/reflection";
import { complex, divide } from "../../numerics/complex";
import { echoesToSettle } from "../../pulses/echoes";
import type { SourceWord } from "./parameters";
import { firstWavePower, mostEchoes, scaledLattice, settledWithin, steadyAt, wordedSource } from "./scaled";
import type { BounceStudy } from "./study";

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
