/**
 * Earth electrodes of contacts with the soil. The current that enters the soil spreads along arms lying on its surface,
 * falling to nothing at their ends: one unknown with its charge spread over the electrode's reach. What this electrode
 * has as impedance by itself is known from the same integrals (electrodeImpedance) and gives way to the stated one in
 * the chain.
 */
import type { Soil, SoilContact, Structure, Wire } from "./structure";

/** Wire indices of the arms of each contact. */
export type ElectrodeArms = readonly (readonly number[])[];

export const armCount = 4;
/** A rod's or strap's usual thickness; the electrode's own impedance is replaced, so that nothing hangs on it. */
const armRadius = 2e-3;
/** First arm's azimuth, radians: off the axes, where stations tend to have their wires. */
const firstAzimuth = 0.4;

export function armsOf({ name, at, reach }: SoilContact): Wire[] {
  return Array.from({ length: armCount }, (_, i) => {
    const azimuth = firstAzimuth + (2 * Math.PI * i) / armCount;
    return {
      name: `${name}, arm ${i + 1}`,
      from: at,
      to: [at[0] + reach * Math.sin(azimuth), at[1] + reach * Math.cos(azimuth), at[2]],
      radius: armRadius,
      conductivity: Number.POSITIVE_INFINITY,
      permeability: 1,
      insulation: null,
    };
  });
}

export interface WithElectrodes {
  readonly structure: Structure;
  readonly arms: ElectrodeArms;
}

const kept = new WeakMap<Structure, WithElectrodes>();

/** The structure with the arms of its electrodes after its own wires; over a perfect plane contacts have none. */
export function withElectrodes(structure: Structure, soil: Soil): WithElectrodes {
  const contacts = structure.contacts ?? [];
  if (contacts.length === 0 || soil.kind === "perfect" || soil.kind === "free space")
    return { structure, arms: contacts.map(() => []) };
  const known = kept.get(structure);
  if (known) return known;
  const first = structure.wires.length;
  const arms = contacts.map((_, c) => Array.from({ length: armCount }, (_, i) => first + c * armCount + i));
  const made = { structure: { ...structure, wires: [...structure.wires, ...contacts.flatMap(armsOf)] }, arms };
  kept.set(structure, made);
  return made;
}

/** Halves of an unknown that flows from the soil into the wires (sign 1) or into the soil (-1), spread over the arms. */
export const armHalves = (arms: readonly number[], firstElement: Int32Array, sign: 1 | -1) =>
  arms.map((wire) => ({ elementEnd: 2 * firstElement[wire]!, sign: -sign / arms.length }));
