/** What decides beside the path how a line fares: the air and where it lies, how long is sent, what is heard from outside. */
import { externalNoise, manMadeFrom, type NoiseClass } from "../../noise/externalNoise";
import { costOfLine, factorOf, referenceTemperature } from "../../noise/systemNoise";
import { exactly } from "../../quantity/quantity";
import type { LinePart, Lying } from "../../station/path";
import type { Station } from "../../station/station";
import { type AirState, standardAir } from "../../stress/standardAir";

export interface Around {
  readonly air: AirState;
  readonly lies: Lying;
  /** Mean over peak envelope power while sending. */
  readonly duty: number;
  readonly place: NoiseClass;
  /** Noise figure of the receiver, dB. */
  readonly receiver: number;
  /** K of the antenna and the lines for their noise. */
  readonly temperature: number;
  /** What of it the file does not say. */
  readonly taken: readonly ("air" | "lies" | "noise" | "receiver")[];
}

/** K: that of most published power curves. */
const usualAir = 313.15;
/** dB: between a good receiver and a poor one (common practice, no source). */
const usualReceiver = exactly(10, "assumed");

export function aroundOf({ site, transmitter }: Station, part: LinePart): Around {
  const lies = part.lies ?? (isBuried(part) ? "buried" : null);
  const { pressure } = standardAir(site?.altitude?.value ?? 0);
  const known = site?.airTemperature?.value ?? null;
  const taken: Around["taken"] = [
    ...(known === null ? (["air"] as const) : []),
    ...(lies === null ? (["lies"] as const) : []),
    ...(site?.noise ? [] : (["noise"] as const)),
    ...(transmitter.noiseFigure ? [] : (["receiver"] as const)),
  ];
  return {
    air: { pressure, temperature: known ?? usualAir },
    lies: lies ?? "in air",
    duty: transmitter.duty.value,
    place: site?.noise ?? "residential",
    receiver: (transmitter.noiseFigure ?? usualReceiver).value,
    temperature: known ?? referenceTemperature,
    taken,
  };
}

const isBuried = ({ route }: LinePart): boolean => route.length > 1 && route.every(([, , z]) => z.value < 0);

/**
 * dB of signal to noise that the path takes on receiving, against none: by reciprocity its loss is that of sending. `antennaLoss`
 * is power into the antenna over radiated power, a factor. Null below the frequencies of the noise formulas.
 */
export function receivePenalty(
  { place, receiver, temperature }: Around,
  frequency: number,
  antennaLoss: number,
  pathLoss: number,
): number | null {
  if (frequency < manMadeFrom) return null;
  return costOfLine({
    external: factorOf(externalNoise(place, frequency).total),
    antennaLoss: Math.max(1, antennaLoss),
    antennaTemperature: temperature,
    lineLoss: Math.max(1, pathLoss),
    lineTemperature: temperature,
    receiver: factorOf(receiver),
  });
}
