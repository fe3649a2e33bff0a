/** Dipoles for several bands on one feed point, and dipoles shorter than half a wave. Lengths in m, H, F. */
import { exactly } from "../quantity/quantity";
import type { Antenna, Load, Shape } from "../station/antennaDescription";
import type { Conductor } from "../station/place";
import { dipole, halfWave } from "./dipoles";
import { antennaWith, east, metres, place, usualHeight, wavelengthAt, wireFor } from "./pieces";
import type { Starter } from "./starter";

/** A part of each leg: how far from the feed. */
const onBothLegs = (fromFeed: number) => ({ hat: null, on: "both legs", fromFeed: metres(fromFeed), length: null });

/** Coils in both legs of a short dipole. */
export const loadedDipole = (d: {
  length: number;
  fromFeed: number;
  inductance: number;
  q: number;
  height: number;
  wire: Conductor;
}): Antenna => {
  const component = { coil: exactly(round(d.inductance)), capacitor: null, resistor: null, q: exactly(d.q) };
  const coil: Load = { kind: "coil", component, selfCapacitance: null, ...onBothLegs(d.fromFeed) };
  return { ...dipole(d), loads: [coil] };
};

/** Traps in both legs. */
export const trapDipole = (d: {
  length: number;
  fromFeed: number;
  inductance: number;
  capacitance: number;
  q: number;
  height: number;
  wire: Conductor;
}): Antenna => {
  const component = {
    coil: exactly(round(d.inductance)),
    capacitor: exactly(round(d.capacitance)),
    resistor: null,
    q: exactly(d.q),
  };
  return { ...dipole(d), loads: [{ kind: "trap", component, ...onBothLegs(d.fromFeed) }] };
};

const round = (x: number): number => Number(x.toPrecision(3));

/** Level dipoles on one feed point, the shorter ones with their ends lower. */
export function fanDipole(d: { lengths: readonly number[]; height: number; wire: Conductor }): Antenna {
  const shapes = d.lengths.map((length, i) => {
    // Each a quarter of a radian below the one before: apart enough to hang, near enough for one mast.
    const endsHeight = metres(d.height - Math.min((length / 2) * Math.sin(0.25 * i), d.height / 2));
    const span = { height: metres(d.height), endsHeight, sag: exactly(0), direction: east, wire: d.wire };
    const shape: Shape = { kind: "dipole", length: metres(length), ...span };
    return { name: i === 0 ? "long" : d.lengths.length === 2 ? "short" : `short ${i}`, shape };
  });
  return { ...antennaWith(shapes[0]!.shape), shapes, at: place(0, 0, 0) };
}

/**
 * Characteristic impedance (ohm) of the `outer` m of a leg beyond a load, taken as an open line: 60 (ln(2 outer/radius) - 1).
 * From memory; good enough to begin with, `trim` gives the length.
 */
const legImpedance = (outer: number, radius: number): number => 60 * (Math.log((2 * outer) / radius) - 1);

/** Reactance (ohm) at `inner` m from the feed that makes a leg of `half` m resonate where `quarter` m would by themselves. */
export function loadingReactance(half: number, inner: number, quarter: number, radius: number): number {
  const k = Math.PI / 2 / quarter;
  return legImpedance(half - inner, radius) * (1 / Math.tan(k * (half - inner)) - 1 / Math.tan(k * (quarter - inner)));
}

/** Length (m) beyond a reactance at `inner` m that makes the leg resonate where `quarter` m would. */
export function lengthBeyond(reactance: number, inner: number, quarter: number, radius: number): number {
  const k = Math.PI / 2 / quarter;
  return Math.atan(1 / (1 / Math.tan(k * (quarter - inner)) + reactance / legImpedance(quarter - inner, radius))) / k;
}

const legRule = "legs as open lines of 60 (ln(2 l/a) - 1) ohm: handbooks, from memory; to be trimmed";

export const loadedDipoleStarters: readonly Starter[] = [
  {
    name: "multiband fan",
    says: "two half-wave dipoles, for a frequency and its double, on one feed point",
    rule: "142.6 m over each frequency in MHz: common practice, no source",
    feeding: { kind: "line" },
    at: (f) => {
      const w = wavelengthAt(f);
      return fanDipole({ lengths: [halfWave * w, (halfWave * w) / 2], height: usualHeight(w), wire: wireFor(w) });
    },
  },
  {
    name: "trap dipole",
    says: "a dipole for a frequency and its double, cut off there by traps",
    rule: `inner part a half wave at the double; trap of 250 ohm, Q 200; ${legRule}`,
    feeding: { kind: "line" },
    at: (f) => {
      const w = wavelengthAt(f);
      const wire = wireFor(w);
      const [quarter, inner] = [(halfWave * w) / 2, (halfWave * w) / 4];
      const omega = 2 * Math.PI * 2 * f;
      const [inductance, capacitance] = [250 / omega, 1 / (omega * 250)];
      // At half of its resonance a trap is (1/2)/(1 - 1/4) of its reactance there.
      const beyond = lengthBeyond(250 * (2 / 3), inner, quarter, wire.diameter.value / 2);
      const length = 2 * (inner + beyond);
      return trapDipole({ length, fromFeed: inner, inductance, capacitance, q: 200, height: usualHeight(w), wire });
    },
  },
  {
    name: "loaded short dipole",
    says: "a dipole of half the length, made resonant by coils in its legs",
    rule: `coils of Q 200 in the middle of the legs; ${legRule}`,
    feeding: { kind: "line" },
    at: (f) => {
      const w = wavelengthAt(f);
      const wire = wireFor(w);
      const quarter = (halfWave * w) / 2;
      const [half, fromFeed] = [quarter / 2, quarter / 4];
      const inductance = loadingReactance(half, fromFeed, quarter, wire.diameter.value / 2) / (2 * Math.PI * f);
      return loadedDipole({ length: 2 * half, fromFeed, inductance, q: 200, height: usualHeight(w), wire });
    },
  },
];
