/**
 * A station as the engine sees it: frozen, SI units, nothing optional left open. The station file's reader makes it;
 * everything the reader filled in stands in `assumptions`. Axes: x east, y north, z up, z = 0 the soil surface, metres.
 * Azimuths in radians clockwise from true north.
 */
import type { LineEntry } from "../lines/lineModel";
import type { Quantity, Spectrum } from "../quantity/quantity";
import type { Antenna } from "./antennaDescription";
import type { Path } from "./path";
import type { Conductor, Place } from "./place";

export interface Station {
  readonly title: string;
  readonly note: string;
  readonly bands: readonly Band[];
  readonly transmitter: Transmitter;
  readonly path: Path;
  readonly antennas: readonly Antenna[];
  readonly ground: Ground;
  readonly earths: readonly Earth[];
  readonly surroundings: readonly Surrounding[];
  readonly people: readonly Person[];
  readonly wanted: Wanted;
  readonly readings: readonly Reading[];
  readonly assumptions: readonly Assumption[];
  /** Lines the file describes by name, its own or catalogue lines with what the owner adds (a price); none when left out. */
  readonly lines?: readonly LineEntry[];
  /** Where the station stands; nothing is known when left out. */
  readonly site?: Site;
  /** Touchstone data by the file name the station uses; null where the file could not be read. */
  readonly measured: Readonly<Record<string, MeasuredNetwork | null>>;
}

/** Kinds of place by their man-made radio noise, as ITU-R P.372 names them. */
export type NoisePlace = "city" | "residential" | "rural" | "quiet rural";

/** What a place does to lines and ears. Null: the file does not say. */
export interface Site {
  /** m above sea level. */
  readonly altitude: Quantity | null;
  /** K of the air on the hottest day that counts. */
  readonly airTemperature: Quantity | null;
  readonly noise: NoisePlace | null;
}

/** One frequency and one sweep (Hz). A file with `frequency` and `band` gives a single band named "". */
export interface Band {
  readonly name: string;
  readonly frequency: Quantity;
  readonly sweep: { readonly from: number; readonly to: number };
  /** Part name to switch position, or a state. */
  readonly set: Readonly<Record<string, string>>;
}

export interface Transmitter {
  /** Peak envelope power into the rated load, W. */
  readonly power: Quantity;
  /** Mean over peak envelope power while transmitting, 0 to 1. */
  readonly duty: Quantity;
  /** Share of the averaging time on the air: sending `on` of `of` seconds; null when the file says nothing. */
  readonly onAir: { readonly on: number; readonly of: number } | null;
  readonly designedFor: Quantity;
  /** Foldback: delivered power (W) at an SWR on the rated load; empty: full power taken as delivered. */
  readonly powerAtSwr: readonly { readonly swr: number; readonly power: Quantity }[];
  /** Name of an earth, or "floating". */
  readonly earthed: string;
  readonly noiseFigure: Quantity | null;
}

/** Relative permittivity or conductivity (S/m) of a soil: one value, or points by frequency. */
export type SoilConstant = Quantity | Extract<Spectrum, { readonly kind: "points" }>;

/** One soil with values by frequency is a single layer without thickness. */
export type Ground =
  | { readonly kind: "free space" }
  | { readonly kind: "perfect" }
  | {
      readonly kind: "soil";
      readonly name: string;
      readonly permittivity: Quantity;
      readonly conductivity: Quantity;
      /** Hz, between which the source of a named soil holds; left out where the file gives the values. */
      readonly range?: { readonly from: number; readonly to: number };
    }
  | {
      readonly kind: "layers";
      /** A soil of the catalogue; left out for what the file describes itself. */
      readonly name?: string;
      readonly layers: readonly {
        readonly permittivity: SoilConstant;
        readonly conductivity: SoilConstant;
        readonly thickness: Quantity | null;
      }[];
    };

export interface Earth {
  readonly name: string;
  readonly form: "rod" | "strip" | "plate" | "unspecified";
  /** Length in m (rod, strip) or area in m² (plate); null when not given. */
  readonly size: Quantity | null;
  readonly diameter: Quantity | null;
  readonly at: Place | null;
  readonly resistance: Quantity | null;
}

export type Surrounding =
  | {
      readonly kind: "conductor";
      readonly name: string;
      readonly points: readonly Place[];
      readonly wire: Conductor;
      /** Resistance of its foot where an end stands on the soil. */
      readonly foot?: Quantity;
      /** m along it from its first point: places where it is broken by an insulator. */
      readonly insulators?: readonly Quantity[];
      /** m along it: places opened to try out what bridges them, ohm. No key of the file: `nearby` sets them. */
      readonly gaps?: readonly {
        readonly at: Quantity;
        readonly bridge: { readonly re: number; readonly im: number } | "open";
      }[];
    }
  | { readonly kind: "sheet"; readonly name: string; readonly corners: readonly Place[] }
  | { readonly kind: "roof"; readonly covering: string; readonly loss: Quantity };

export interface Person {
  readonly place: string;
  readonly at: Place;
  readonly who: "public" | "household" | "operator";
  /** Seconds, or a word. */
  readonly stays: Quantity | "all day" | "passing";
}

export interface Wanted {
  readonly elevation: Quantity | null;
  readonly direction: number | null;
  readonly swrBelow: Quantity | null;
  readonly mayChange: readonly string[];
}

export interface Reading {
  /** A joint, or the name of a meter. */
  readonly at: string;
  readonly frequency: Quantity | null;
  readonly swr: Quantity | null;
  readonly file: string | null;
  readonly taken: string | null;
  readonly farEnd: "antenna" | "open" | "shorted";
}

/** A value nobody stated: what it is, what was taken, why, and its source. */
export interface Assumption {
  /** Path in the station, joined by dots ("transmitter.duty"). */
  readonly place: string;
  readonly name: string;
  readonly value: string;
  readonly reason: string;
}

/** Touchstone network: scattering parameters, row-major ports x ports at each frequency, re/im interleaved. */
export interface MeasuredNetwork {
  readonly ports: number;
  readonly reference: number;
  readonly frequencies: readonly number[];
  readonly scattering: readonly (readonly number[])[];
}
