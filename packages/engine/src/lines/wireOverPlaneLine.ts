/** A round wire over a wide plane of metal. */
import { surfaceResistance } from "../conductors/solidWire";
import { relativePermittivity } from "../dielectrics/complexPermittivity";
import { add, complex, scale } from "../numerics/complex";
import { crowdedWireImpedance, fieldRadius } from "./crowdedWire";
import type { LineImmittance } from "./immittance";
import type { WireOverPlaneLine } from "./lineModel";
import { reactanceOf, shuntOf } from "./pairShunt";
import { proximityFactor } from "./parallelWireLine";

/**
 * Series impedance and shunt admittance per metre: the wire and its image, C = 2 pi eps/acosh(2h/d), exact for a plane without
 * end that conducts well. The plane's current spreads as e/(pi (x^2 + e^2)), e^2 = h^2 - (d/2)^2, so that its resistance is the
 * surface resistance over 2 pi e: right while its skin depth is small against its thickness and the height. `omega` in rad/s.
 * Source: elementary (method of images).
 */
export function wireOverPlaneImmittance(line: WireOverPlaneLine, omega: number): LineImmittance {
  const [radius, height] = [fieldRadius(line.wire), line.height.value];
  if (!(height > radius)) {
    throw new RangeError(
      `wire over plane: the axis of a wire of ${radius} m radius lies ${height} m above it; expected a wire that does not touch`,
    );
  }
  const inVacuum = (2 * Math.PI) / Math.acosh(height / radius);
  const { conductivity, permeability } = line.plane;
  const surface = conductivity === Number.POSITIVE_INFINITY ? 0 : surfaceResistance(conductivity, permeability, omega);
  const plane = surface / (2 * Math.PI * Math.sqrt(height * height - radius * radius));
  const wire = crowdedWireImpedance(line.wire, omega, proximityFactor(height / radius));
  return {
    series: add(add(wire, complex(plane, plane)), reactanceOf(inVacuum, omega)),
    shunt: shuntOf(scale(relativePermittivity(line.dielectric, omega), inVacuum), omega),
    outerResistance: plane,
    notes: [],
  };
}
