/**
 * Earth electrodes of contacts with the soil. The current that enters the soil spreads along arms lying in its surface,
 * falling to nothing at their ends: one unknown with its charge spread over the electrode's reach. In the surface itself,
 * because there a charge has the field of a current into the soil; a little above it, most of its field would be that of
 * a capacitor to the soil, which the foot of a wire beside it would feel. What this electrode
 * has as impedance by itself is known from the same integrals (electrodeImpedance) and gives way to the stated one in
 * the chain.
 */
import type { Half } from "./elements";
import type { Soil, SoilContact, Structure, Wire } from "./structure";

/** Wire indices of each contact's electrode: its arms, then the stem that leads down to them. */
export type ElectrodeArms = readonly (readonly number[])[];

export const armCount = 4;
/** A rod's or strap's usual thickness; the electrode's own impedance is replaced, so that nothing hangs on it. */
const armRadius = 2e-3;
/** First arm's azimuth, radians: off the axes, where stations tend to have their wires. */
const firstAzimuth = 0.4;

/**
 * Earths that people build and measure have some 100 ohm or less. On soil of resistivity r (ohm m) that takes a spread of
 * r/100 at least (about half of r over the arms' length is their own resistance): a smaller one would put strong fields beside the
 * foot of the wire that an earth of such a resistance does not have. From `widestSpread` (m) to 10 m a mast of 24 m
 * over soil of 1 mS/m changes by 3 ohm at 3.6 MHz, by 9 at 1.9 MHz: less than what is known of an earth's resistance.
 */
const usualResistance = 100;
const widestSpread = 4;

/** Length (m) of the arms of a contact on a soil; over a perfect plane there are none. */
function spreadOf({ reach }: SoilContact, soil: Soil): number {
  if (soil.kind !== "homogeneous" && soil.kind !== "layered") return reach;
  const { conductivity } = soil.kind === "layered" ? soil.layers[0]! : soil;
  return Math.max(reach, Math.min(widestSpread, 1 / (conductivity * usualResistance)));
}

export function armsOf(contact: SoilContact, soil: Soil): Wire[] {
  const { name, at } = contact;
  const reach = spreadOf(contact, soil);
  return Array.from({ length: armCount }, (_, i) => {
    const azimuth = firstAzimuth + (2 * Math.PI * i) / armCount;
    return {
      name: `${name}, arm ${i + 1}`,
      from: [at[0], at[1], 0],
      to: [at[0] + reach * Math.sin(azimuth), at[1] + reach * Math.cos(azimuth), 0],
      radius: armRadius,
      conductivity: Number.POSITIVE_INFINITY,
      permeability: 1,
      insulation: null,
    };
  });
}

/** From the contact down to where the arms meet: without it the current would leap there and leave no charge behind. */
const stemOf = ({ name, at }: SoilContact): Wire => ({
  name: `${name}, stem`,
  from: at,
  to: [at[0], at[1], 0],
  radius: Math.min(armRadius, at[2] / 5),
  conductivity: Number.POSITIVE_INFINITY,
  permeability: 1,
  insulation: null,
});

export interface WithElectrodes {
  readonly structure: Structure;
  readonly arms: ElectrodeArms;
}

/** The structure with the arms of its electrodes after its own wires; over a perfect plane contacts have none. */
export function withElectrodes(structure: Structure, soil: Soil): WithElectrodes {
  const contacts = structure.contacts ?? [];
  if (contacts.length === 0 || soil.kind === "perfect" || soil.kind === "free space")
    return { structure, arms: contacts.map(() => []) };
  const first = structure.wires.length;
  const each = armCount + 1;
  return {
    structure: {
      ...structure,
      wires: [...structure.wires, ...contacts.flatMap((c) => [...armsOf(c, soil), stemOf(c)])],
    },
    arms: contacts.map((_, c) => Array.from({ length: each }, (_, i) => first + c * each + i)),
  };
}

/** Halves of an unknown that flows from the soil into the wires (sign 1) or into the soil (-1), spread over the arms. */
export const armHalves = (arms: readonly number[], firstElement: Int32Array, sign: 1 | -1): Half[] =>
  arms.slice(0, armCount).map((wire) => ({ elementEnd: 2 * firstElement[wire]!, sign: -sign / armCount }));

/** The same on a whole electrode: the stem carries all of it along its length. */
export const electrodeHalves = (electrode: readonly number[], firstElement: Int32Array, sign: 1 | -1): Half[] => [
  ...armHalves(electrode, firstElement, sign),
  ...electrode
    .slice(armCount)
    .flatMap((stem) => [0, 1].map((end) => ({ elementEnd: 2 * firstElement[stem]! + end, sign: -sign }))),
];
