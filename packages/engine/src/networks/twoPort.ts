/** Two-ports as chain matrices: [V1; I1] = [a b; c d] [V2; I2], both currents counted towards the antenna. */
import type { PortState } from "../lines/alongLine";
import { add, type Complex, complex, divide, multiply, one, zero } from "../numerics/complex";

/** a and d are pure numbers, b in ohm, c in siemens. Port 1 faces the transmitter. */
export interface TwoPort {
  readonly a: Complex;
  readonly b: Complex;
  readonly c: Complex;
  readonly d: Complex;
}

export const through: TwoPort = { a: one, b: zero, c: zero, d: one };

/** An impedance (ohm) in the line. */
export const seriesImpedance = (impedance: Complex): TwoPort => ({ a: one, b: impedance, c: zero, d: one });

/** An admittance (S) across the line. */
export const shuntAdmittance = (admittance: Complex): TwoPort => ({ a: one, b: zero, c: admittance, d: one });

/** Ideal transformer: `ratio` volts on the transmitter's side for one volt on the antenna's side. */
export const idealTransformer = (ratio: number): TwoPort => ({
  a: complex(ratio),
  b: zero,
  c: zero,
  d: complex(1 / ratio),
});

/** Chain of two-ports in the order of the path, the transmitter's end first. */
export function cascade(...parts: readonly TwoPort[]): TwoPort {
  return parts.reduce(product, through);
}

const product = (m: TwoPort, n: TwoPort): TwoPort => ({
  a: add(multiply(m.a, n.a), multiply(m.b, n.c)),
  b: add(multiply(m.a, n.b), multiply(m.b, n.d)),
  c: add(multiply(m.c, n.a), multiply(m.d, n.c)),
  d: add(multiply(m.c, n.b), multiply(m.d, n.d)),
});

/** State at port 1 from the state at port 2. */
export const towardsTransmitter = (network: TwoPort, load: PortState): PortState => ({
  voltage: add(multiply(network.a, load.voltage), multiply(network.b, load.current)),
  current: add(multiply(network.c, load.voltage), multiply(network.d, load.current)),
});

/** Impedance (ohm) seen into port 1 when port 2 is closed with `load` (ohm). */
export function transformedImpedance(network: TwoPort, load: Complex): Complex {
  const { voltage, current } = towardsTransmitter(network, { voltage: load, current: one });
  return divide(voltage, current);
}

/**
 * Section of `loss` dB (0 or more) that is matched to `resistance` (ohm) on both sides: series and shunt loss in equal parts,
 * like a length of line without reactance. Into any other load it takes a different share, as a real part does.
 */
export function matchedAttenuator(loss: number, resistance: number): TwoPort {
  if (!(loss >= 0 && resistance > 0)) {
    throw new RangeError(
      `loss ${loss} dB on ${resistance} ohm: expected a loss of 0 dB or more and a resistance above 0`,
    );
  }
  const nepers = (loss * Math.LN10) / 20;
  const diagonal = complex(Math.cosh(nepers));
  const sine = Math.sinh(nepers);
  return { a: diagonal, b: complex(sine * resistance), c: complex(sine / resistance), d: diagonal };
}
