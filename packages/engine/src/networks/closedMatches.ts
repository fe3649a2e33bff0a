/** Matches that have a closed form, without loss: two elements, a stub across the line, a quarter wave. */
import { type Complex, reciprocal } from "../numerics/complex";

export interface TwoElementMatch {
  /** Where the element across the line stands: at the load, or at the side that is to see the wanted resistance. */
  readonly across: "at the load" | "at the source";
  /** S, of the element across; ohm, of the one in series. */
  readonly susceptance: number;
  readonly reactance: number;
}

/**
 * All matches of two reactances that turn `load` (ohm, Re > 0) into the resistance `wanted` (ohm). Two where the load's resistance is
 * above what is wanted or its conductance below; up to four else. Source: elementary; cf. Pozar, Microwave Engineering, section 5.1.
 */
export function twoElementMatches(load: Complex, wanted: number): TwoElementMatch[] {
  if (!(load.re > 0 && wanted > 0)) {
    throw new RangeError(
      `two-element match: load of ${load.re} ohm, wanted ${wanted} ohm; expected resistances above 0`,
    );
  }
  return [...acrossTheLoad(load, wanted), ...acrossTheSource(load, wanted)];
}

/** Conductance of the load below 1/wanted: a susceptance brings its resistance to `wanted`, a reactance takes the rest away. */
function acrossTheLoad(load: Complex, wanted: number): TwoElementMatch[] {
  const { re: g, im: b } = reciprocal(load);
  const rest = g / wanted - g * g;
  if (rest < 0) return [];
  return bothSigns(Math.sqrt(rest)).map((total) => ({
    across: "at the load",
    susceptance: total - b,
    reactance: total / (g * g + total * total),
  }));
}

/** Resistance of the load below `wanted`: a reactance brings its conductance to 1/wanted, a susceptance takes the rest away. */
function acrossTheSource(load: Complex, wanted: number): TwoElementMatch[] {
  const rest = load.re * (wanted - load.re);
  if (rest < 0) return [];
  return bothSigns(Math.sqrt(rest)).map((total) => ({
    across: "at the source",
    susceptance: total / (load.re * wanted),
    reactance: total - load.im,
  }));
}

const bothSigns = (size: number): number[] => (size === 0 ? [0] : [size, -size]);

/** Loaded Q of a match of two elements between resistances whose ratio (1 or more) is `ratio`. Source: elementary. */
export const twoElementQ = (ratio: number): number => Math.sqrt(ratio - 1);

export interface StubMatch {
  /** Wavelengths on the line from the load to the stub, and of the stub itself, shorted or open. */
  readonly distance: number;
  readonly shorted: number;
  readonly open: number;
}

/** Single stubs across a line of `z0` ohm that match `load` to it. Source: closed form, cf. Pozar, Microwave Engineering, section 5.2. */
export function shuntStubMatches(load: Complex, z0: number): StubMatch[] {
  const { re: r, im: x } = load;
  const spread = Math.sqrt((r * ((z0 - r) ** 2 + x * x)) / z0);
  const tangents = r === z0 ? [-x / (2 * z0)] : bothSigns(spread).map((root) => (x + root) / (r - z0));
  return tangents.map((t) => {
    const below = z0 * (r * r + (x + z0 * t) ** 2);
    const susceptance = (r * r * t - (z0 - x * t) * (x + z0 * t)) / below;
    return {
      distance: halfTurn(Math.atan(t)),
      shorted: halfTurn(Math.atan(1 / (susceptance * z0))),
      open: halfTurn(-Math.atan(susceptance * z0)),
    };
  });
}

/** Wavelengths of an angle, between 0 and a half. */
const halfTurn = (angle: number): number => (angle < 0 ? angle + Math.PI : angle) / (2 * Math.PI);

/** Impedance (ohm) of a quarter wave between two resistances. */
export const quarterWaveBetween = (first: number, second: number): number => Math.sqrt(first * second);
