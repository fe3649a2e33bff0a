/** Complex permittivity of what lies between conductors, causal wherever a frequency is stated. */
import { add, type Complex, complex, divide, one, scale } from "../numerics/complex";
import { vacuumPermittivity } from "../numerics/vacuum";
import type { Dielectric } from "./dielectric";
import { fittedPermittivity } from "./lossPoints";

/**
 * Relative permittivity eps' - j eps'' (time factor e^{+jwt}) at `omega` rad/s, above 0. Without `statedAt` and loss points it
 * is the same everywhere, which is not causal but right near the frequency it belongs to. With `statedAt` the susceptibility
 * follows a power of frequency: an exact Kramers-Kronig pair of nearly constant loss tangent. Loss points: a distribution of
 * relaxations (lossPoints.ts). Relaxations (Debye) and conductivity are added. RangeError for a passive material that cannot be.
 * Source of the power: Jonscher, Nature 267 (1977) 673; Debye, Polar Molecules (1929).
 */
export function relativePermittivity(dielectric: Dielectric, omega: number): Complex {
  check(dielectric, omega);
  const frequency = omega / (2 * Math.PI);
  let sum = withoutAdditions(dielectric, frequency);
  for (const { strength, frequency: limit } of dielectric.relaxations ?? []) {
    sum = add(sum, scale(divide(one, complex(1, frequency / limit)), strength));
  }
  const conducting = (dielectric.conductivity ?? 0) / (omega * vacuumPermittivity);
  return add(sum, complex(0, -conducting));
}

/** Imaginary over real part of a permittivity, counted positive. */
export const lossTangentOf = (permittivity: Complex): number => -permittivity.im / permittivity.re;

function withoutAdditions(dielectric: Dielectric, frequency: number): Complex {
  const { permittivity, lossTangent, statedAt, lossPoints } = dielectric;
  if (lossPoints !== undefined && lossPoints.length > 0) return fittedPermittivity(dielectric, frequency);
  const lossy = permittivity * lossTangent;
  if (statedAt === undefined || lossy === 0) return complex(permittivity, -lossy);
  return powerLaw(permittivity - 1, lossy, frequency / statedAt);
}

/** 1 + susceptibility of constant phase: at `ratio` 1 it is `real` - j `lossy`, elsewhere its size follows a power. */
function powerLaw(real: number, lossy: number, ratio: number): Complex {
  const phase = Math.atan2(lossy, real);
  const size = Math.hypot(real, lossy) * ratio ** ((-2 * phase) / Math.PI);
  return complex(1 + size * Math.cos(phase), -size * Math.sin(phase));
}

function check(dielectric: Dielectric, omega: number): void {
  const { name, permittivity, lossTangent, conductivity, statedAt, relaxations } = dielectric;
  if (!(omega > 0 && omega < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`permittivity of ${name}: ${omega} rad/s; expected a frequency above 0`);
  }
  if (!(permittivity >= 1 && lossTangent >= 0 && (conductivity ?? 0) >= 0 && (statedAt ?? 1) > 0)) {
    throw new RangeError(
      `permittivity of ${name}: relative permittivity ${permittivity}, loss tangent ${lossTangent}; ` +
        "expected a permittivity of 1 or more and no negative loss",
    );
  }
  if (relaxations?.some((r) => !(r.strength >= 0 && r.frequency > 0)) === true) {
    throw new RangeError(
      `permittivity of ${name}: expected relaxations of no negative strength at frequencies above 0`,
    );
  }
}
