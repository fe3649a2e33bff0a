/** The mistaken idea that `limits` corrects: the one that this station's own numbers refute. English. */
import { plainNumber, swrText } from "../quantity/format";
import { celsius, roughWatts, volts } from "./stress";

export interface StressIdea {
  readonly idea: string;
  readonly refutation: string;
}

export interface StressIdeaFacts {
  /** A line with both limits: V peak it stands, ohm, W at which its conductor is at its limit, °C. */
  readonly both: {
    readonly designation: string;
    readonly peak: number;
    readonly impedance: number;
    readonly watts: number;
    readonly degrees: number;
  } | null;
  /** A line with a standing wave: SWR on it, highest and lowest V peak along it. */
  readonly standing: {
    readonly name: string;
    readonly swr: number;
    readonly highest: number;
    readonly lowest: number;
  } | null;
  /** A part with a heat limit: W of peak envelope power at the share as asked, and at steady carrier. */
  readonly warm: { readonly name: string; readonly asSent: number; readonly steady: number } | null;
  /** kV/cm peak at the antenna's wires. */
  readonly field: number;
}

export function stressMistakenIdea(f: StressIdeaFacts): StressIdea {
  if (f.standing && f.standing.swr > 2.5 && f.standing.highest > 2 * f.standing.lowest)
    return {
      idea: "“The SWR tells how high the voltage is.”",
      refutation: `On ${f.standing.name} the SWR is near ${swrText(f.standing.swr)} everywhere, the voltage between ${volts(f.standing.lowest)} and ${volts(f.standing.highest)} peak. What a part meets depends on where along the wave it sits: another length of line moves it without changing the SWR.`,
    };
  if (f.both) {
    const byVoltage = f.both.peak ** 2 / (2 * f.both.impedance);
    return {
      idea: "“The voltage rating is the power rating.”",
      refutation: `${volts(f.both.peak)} peak on ${plainNumber(f.both.impedance, 0)} Ω would be ${roughWatts(byVoltage)}; the conductor of this ${f.both.designation} is at ${celsius(f.both.degrees)} with ${roughWatts(f.both.watts)} sent as it is here.`,
    };
  }
  if (f.warm)
    return {
      idea: "“The printed watts hold for every way of sending.”",
      refutation: `What warms is the mean: ${f.warm.name} is at its heat limit with ${roughWatts(f.warm.asSent)} sent as it is here, and with ${roughWatts(f.warm.steady)} of a steady carrier.`,
    };
  return {
    idea: "“The ends of a wire carry no current, so they are harmless.”",
    refutation: `Where the current ends the charge stands: the field at the metal is ${plainNumber(f.field, 1)} kV/cm peak there, the highest of the whole antenna.`,
  };
}
