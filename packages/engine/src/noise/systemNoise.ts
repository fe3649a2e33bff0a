/** Noise of a whole receiving system: the sky, the antenna, the line and the receiver, as one factor over k T0 b. */

/** Reference temperature, K. */
export const referenceTemperature = 290;
/** Boltzmann constant, J/K (exact, SI). */
const boltzmann = 1.380649e-23;

/** Factors, not decibels. Losses are available power in over available power out: 1 for none. */
export interface ReceivingSystem {
  /** External noise over k T0 b. */
  readonly external: number;
  /** Of the antenna and the soil near by, and K at which they are. */
  readonly antennaLoss: number;
  readonly antennaTemperature: number;
  /** Of all between antenna and receiver. */
  readonly lineLoss: number;
  readonly lineTemperature: number;
  readonly receiver: number;
}

export interface Preamplifier {
  /** Noise factor and power gain, factors. */
  readonly noise: number;
  readonly gain: number;
}

export const factorOf = (decibels: number): number => 10 ** (decibels / 10);
export const decibelsOf = (factor: number): number => 10 * Math.log10(factor);

/** Noise that a loss at temperature T adds, at its input, over k T0 b. */
const warm = (loss: number, temperature: number): number => ((loss - 1) * temperature) / referenceTemperature;

function checked(system: ReceivingSystem): void {
  const { external, antennaLoss, lineLoss, receiver } = system;
  if (!(external > 0 && antennaLoss >= 1 && lineLoss >= 1 && receiver >= 1)) {
    throw new RangeError(
      `receiving system: external ${external}, losses ${antennaLoss} and ${lineLoss}, receiver ${receiver}; expected factors of at least 1`,
    );
  }
}

/**
 * f = fa + (lc - 1) Tc/T0 + lc (lt - 1) Tt/T0 + lc lt (fr - 1): noise referred to the external signal. All parts matched for
 * available power. Source: ITU-R P.372, "sources of radio noise and their relation to the receiving system" (from memory).
 */
export function systemNoiseFactor(system: ReceivingSystem): number {
  checked(system);
  const { external, antennaLoss, antennaTemperature, lineLoss, lineTemperature, receiver } = system;
  return (
    external +
    warm(antennaLoss, antennaTemperature) +
    antennaLoss * warm(lineLoss, lineTemperature) +
    antennaLoss * lineLoss * (receiver - 1)
  );
}

/** What line and receiver together add at the antenna's terminals, a factor over k T0 b. */
export const addedBehindAntenna = ({ lineLoss, lineTemperature, receiver }: ReceivingSystem): number =>
  warm(lineLoss, lineTemperature) + lineLoss * (receiver - 1);

/** dB of signal to noise that the line costs: this system against the same with a line without loss. */
export const costOfLine = (system: ReceivingSystem): number =>
  decibelsOf(systemNoiseFactor(system) / systemNoiseFactor({ ...system, lineLoss: 1 }));

/** Receiver behind a preamplifier: f1 + (f2 - 1)/g1 (Friis 1944). */
export const behind = ({ noise, gain }: Preamplifier, receiver: number): number => noise + (receiver - 1) / gain;

/** dB of signal to noise won by a preamplifier in front of the receiver, at the near end of the line. */
export const wonInShack = (system: ReceivingSystem, preamplifier: Preamplifier): number =>
  decibelsOf(
    systemNoiseFactor(system) / systemNoiseFactor({ ...system, receiver: behind(preamplifier, system.receiver) }),
  );

/** dB won by the same preamplifier at the antenna, before the line. */
export function wonAtAntenna(system: ReceivingSystem, preamplifier: Preamplifier): number {
  const line = 1 + addedBehindAntenna(system);
  const mounted = { ...system, lineLoss: 1, receiver: behind(preamplifier, line) };
  return decibelsOf(systemNoiseFactor(system) / systemNoiseFactor(mounted));
}

/** Noise power in dBm in `bandwidth` Hz that stands at the receiver's input, its own noise counted as if it came in there. */
export function noiseAtReceiver(system: ReceivingSystem, bandwidth: number): number {
  const { antennaLoss, lineLoss } = system;
  const watts = (boltzmann * referenceTemperature * bandwidth * systemNoiseFactor(system)) / (antennaLoss * lineLoss);
  return decibelsOf(watts) + 30;
}

/** dB by which the noise rises when the antenna takes the place of a dummy load (at T0) on the receiver. */
export const riseOverDummyLoad = (system: ReceivingSystem): number =>
  decibelsOf(systemNoiseFactor(system) / (system.antennaLoss * system.lineLoss * system.receiver));

/**
 * The rise (dB) from which the line costs at most `cost` dB, whatever the noise: with a line at T0,
 * cost = -10 log10(1 - (1 - 1/lt)/rise).
 */
export const riseNeeded = (lineLoss: number, cost: number): number =>
  lineLoss <= 1 ? Number.NEGATIVE_INFINITY : decibelsOf((1 - 1 / lineLoss) / (1 - 10 ** (-cost / 10)));

/** S-units: S9 is -73 dBm below 30 MHz and -93 dBm above, 6 dB each. IARU Region 1 Technical Recommendation R.1. */
export const sUnitsOf = (dBm: number, frequency: number): number => 9 + (dBm - (frequency < 30e6 ? -73 : -93)) / 6;
