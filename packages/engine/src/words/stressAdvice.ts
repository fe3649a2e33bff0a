/** What to do about what fails first, and what to take care of. English. */
import { metres } from "../quantity/format";
import { celsius, type FirstFacts, type HotFacts, nameOf, roughWatts, type StressFacts, volts } from "./stress";

export function stressAdvice(f: StressFacts): string {
  if (f.verdict === "good")
    return `Nothing to do at this power. More than ${roughWatts(Math.min(f.failing, f.failingLow))} wants a new look at what comes first.`;
  const power = roughWatts(Math.min(f.failing, f.failingLow));
  switch (f.first.of) {
    case "temperature":
      return heatAdvice(f, power);
    case "heat":
      return `Send with ${power} at most, or pause longer: ${nameOf(f.first)} warms with the mean. Else put a larger one there, or one for the impedance it really meets.`;
    case "sparkover":
      return `Take an arrestor that fires above ${volts(2 * f.peak)} for this place, or move it to where the voltage is low.`;
    case "glow":
      return f.first.name === ""
        ? `Send with ${power} at most, or make the wire's ends round: a loop or ball several wire diameters thick there, and thicker wire.`
        : `Send with ${power} at most, or take ${nameOf(f.first)} with thicker conductors; a better match lowers the voltage with the root of the SWR.`;
    case "voltage":
      return voltageAdvice(f, power);
  }
}

function heatAdvice(f: StressFacts, power: string): string {
  const matched =
    f.hot && f.swrOnLine !== null && f.swrOnLine > 1.3 && f.hot.conductor - f.hot.matched > 3
      ? ` A match at its far end would take its conductor from ${celsius(f.hot.conductor)} to ${celsius(f.hot.matched)} at the same power.`
      : "";
  const pause = f.endless ? "pause between transmissions, " : "pause longer, ";
  return `Send with ${power} at most, ${pause}or lay a thicker line.${matched}`;
}

function voltageAdvice(f: StressFacts, power: string): string {
  if (f.added && f.added.volts < 0.7 * f.added.now)
    return `${lengthChange(f.added.metres)}: that brings its voltage from ${volts(f.added.now)} to ${volts(f.added.volts)} peak on this band, while its current rises; other bands change too. Else send with ${power} at most.`;
  return `Send with ${power} at most, or put there what stands more than ${volts(Math.SQRT2 * f.peak)} peak; a better match at the antenna's end lowers the voltage with the root of the SWR.`;
}

const lengthChange = (change: number): string =>
  change < 0 ? `Take ${metres(-change)} off the line behind it` : `Add ${metres(change)} of line behind it`;

export interface CautionFacts {
  readonly peak: number;
  readonly hot: HotFacts | null;
}

export function stressCautions({ peak, hot }: CautionFacts): string[] {
  return [
    ...(peak > 50
      ? [
          `Up to ${volts(peak)} peak stands on lines and joints while sending: burns deep into the skin, and enough to light what burns. Open no box and touch no conductor before the transmitter is off.`,
        ]
      : []),
    ...(hot && hot.conductor > 60
      ? [
          `The conductor of ${hot.name} reaches ${celsius(hot.conductor)} and its surface ${celsius(hot.jacket)}: keep it off foam, insulation wool and other cables, and do not wind it up while sending.`,
        ]
      : []),
    "Below a limit under these assumptions is no promise: old, kinked, wet or badly soldered parts fail long before.",
  ];
}

/** A caution about another band: what fails there, and from how many watts. */
export const otherBandSays = (band: string, watts: number, first: FirstFacts): string =>
  `On ${band} ${nameOf(first)} comes first, above ${roughWatts(watts)} already: ${first.happens}.`;
