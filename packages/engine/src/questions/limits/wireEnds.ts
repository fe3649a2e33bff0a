/** The field at the antenna's wires: charge per metre from how fast the current changes along them. */
import type { WorkedPoint } from "../../chain/workedPoint";
import { magnitude, subtract } from "../../numerics/complex";
import { vacuumPermittivity } from "../../numerics/vacuum";
import { coronaOnsetField, peekDensity } from "../../stress/airBreakdown";
import type { AirState } from "../../stress/standardAir";
import { type DrivenAntenna, elementCurrent } from "../../wires/driveAntenna";
import type { Conditions } from "./conditions";
import { type LimitFact, timesOfVoltage } from "./limitFact";

interface WireField {
  /** Index into the structure's wires. */
  readonly wire: number;
  /** V/m peak at the metal, mean over the element next to the end, and from which such a wire glows. */
  readonly field: number;
  readonly onset: number;
}

/** Weathered wire (Peek). */
const weathered = 0.93;

/** Over this many radii the charge is averaged: less tells more of the mesh than of the wire. */
const stretch = 40;

/**
 * The stretch of the antenna's wires whose field comes nearest to glow: λ/(2π ε0 a), λ = |ΔI|/(ω ℓ) from the law of
 * continuity, over 40 radii or one element. A cut end bunches charge in its last few diameters to more than this mean. Null
 * where there is no wire.
 */
function hardestWire(point: WorkedPoint, driven: DrivenAntenna, air: AirState): WireField | null {
  const { structure } = driven.solution.model;
  const omega = 2 * Math.PI * point.frequency;
  const density = peekDensity(air);
  const { antennaWires, restingWires } = point.antenna.build;
  const fields = [...antennaWires.values()].flat().flatMap((wire): WireField[] => {
    if (restingWires.has(wire)) return [];
    const { radius } = structure.wires[wire]!;
    const onset = coronaOnsetField(radius, density, "parallel wires", weathered);
    const charge = greatestCharge(driven, wire, stretch * radius) / omega;
    return [{ wire, field: (Math.SQRT2 * charge) / (2 * Math.PI * vacuumPermittivity * radius), onset }];
  });
  return fields.sort((a, b) => b.field / b.onset - a.field / a.onset)[0] ?? null;
}

/** A/m by which the current falls at most along a wire, over stretches of at least `least` metres. */
function greatestCharge(driven: DrivenAntenna, wire: number, least: number): number {
  const { mesh } = driven.solution.model;
  const [from, to] = [mesh.firstElement[wire]!, mesh.firstElement[wire + 1]!];
  const changeOver = (first: number, last: number, length: number): number =>
    magnitude(subtract(elementCurrent(driven, last, 1), elementCurrent(driven, first, 0))) / length;
  let greatest = 0;
  for (let e = from; e < to; e++) {
    let [last, length] = [e, mesh.elements.length[e]!];
    while (length < least && last + 1 < to) length += mesh.elements.length[++last]!;
    let first = e;
    while (length < least && first > from) length += mesh.elements.length[--first]!;
    greatest = Math.max(greatest, changeOver(first, last, length));
  }
  return greatest;
}

/** Wet wire and rough ends glow from half the field (common practice, no source). */
const wireDoubt = { low: 0.5, value: 1, high: 1.05 } as const;

/** As one limit of the whole antenna. */
export function wireLimits(point: WorkedPoint, driven: DrivenAntenna, conditions: Conditions): LimitFact[] {
  const found = hardestWire(point, driven, conditions.air);
  if (!found) return [];
  const limit = (found.onset * wireDoubt[conditions.limits]) / 1e5;
  const value = found.field / 1e5;
  return [
    {
      part: "",
      of: "glow",
      value,
      limit,
      unit: "kV/cm peak",
      happens: "the air round the ends of the antenna's wires glows",
      times: timesOfVoltage(value, limit),
      source: "Peek's law, weathered wire (handbook)",
      at: null,
    },
  ];
}
