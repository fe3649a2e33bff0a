/** Under what conditions the limits are worked out: air, sending, and how heat leaves. */
import type { Lying } from "../../station/path";
import type { Station } from "../../station/station";
import { type Modulation, modulations } from "../../stress/modulation";
import { type AirState, standardAir } from "../../stress/standardAir";
import type { Rhythm } from "../../stress/transientHeat";
import type { Parameters } from "../common/question";

export interface Span {
  readonly low: number;
  readonly value: number;
  readonly high: number;
}

/** What was asked and what the file says, before any doubt is moved. */
export interface Asked {
  readonly altitude: number;
  /** K, and where it comes from. */
  readonly airTemperature: Span & { readonly from: "asked" | "file" | "taken" };
  readonly lies: Lying | null;
  readonly modulation: Modulation | null;
  /** Mean over peak envelope power while sending. */
  readonly duty: Span;
  readonly sending: Sending;
  /** m of air in the tuner; null: its voltage limit counts. */
  readonly gap: number | null;
}

/** By turns; once, from cold, for so many seconds; or without end. */
export type Sending =
  | { readonly kind: "turns"; readonly rhythm: Rhythm }
  | { readonly kind: "once"; readonly seconds: number }
  | { readonly kind: "endless" };

/** One set of conditions; `limits` says which end of each limit's doubt counts. */
export interface Conditions {
  readonly air: AirState;
  readonly duty: number;
  readonly sending: Sending;
  readonly lies: Lying | null;
  /** Times the heat that leaves at a temperature. */
  readonly cooling: number;
  /** K m/W. */
  readonly soilResistivity: number;
  readonly limits: "low" | "value" | "high";
  readonly gap: number | null;
}

/** K where nobody says more: that of most published power curves. */
const usualAir = 313.15;
/** K far from a buried line (IEC 60287-3-1 for temperate places, from memory). */
export const soilTemperature = 293.15;
/** K m/W, moist to dry: IEC 60287-3-1 (from memory). */
export const resistivity: Span = { low: 0.7, value: 1, high: 2.5 };
/** Correlations of free convection, emissivities and draughts together (our estimate). */
export const cooling: Span = { low: 0.8, value: 1, high: 1.25 };

export function askedOf(station: Station, parameters: Parameters): Asked {
  const modulation = (parameters.modulation as Modulation | undefined) ?? null;
  const { duty } = station.transmitter;
  return {
    altitude: typeof parameters.altitude === "number" ? parameters.altitude : (station.site?.altitude?.value ?? 0),
    airTemperature: airOf(station, parameters),
    lies: (parameters.lies as Lying | undefined) ?? null,
    modulation,
    duty: modulation ? modulations[modulation].mean : { low: duty.low, value: duty.value, high: duty.high },
    sending: sendingOf(station, parameters),
    gap: typeof parameters.gap === "number" ? parameters.gap : null,
  };
}

function airOf(station: Station, { airTemperature }: Parameters): Asked["airTemperature"] {
  if (typeof airTemperature === "number")
    return { low: airTemperature, value: airTemperature, high: airTemperature, from: "asked" };
  const own = station.site?.airTemperature;
  if (own) return { low: own.low, value: own.value, high: own.high, from: "file" };
  return { low: usualAir, value: usualAir, high: usualAir, from: "taken" };
}

function sendingOf({ transmitter: { onAir } }: Station, { transmission }: Parameters): Sending {
  if (typeof transmission !== "number") return onAir ? { kind: "turns", rhythm: onAir } : { kind: "endless" };
  if (!onAir || onAir.on >= onAir.of) return { kind: "once", seconds: transmission };
  return { kind: "turns", rhythm: { on: transmission, of: (transmission * onAir.of) / onAir.on } };
}

/** Share of the time in which the transmitter sends, as a mean over long. */
export const shareOfTime = (sending: Sending): number =>
  sending.kind === "turns" ? sending.rhythm.on / sending.rhythm.of : 1;

export function usualConditions(asked: Asked): Conditions {
  return {
    air: airAt(asked, asked.airTemperature.value),
    duty: asked.duty.value,
    sending: asked.sending,
    lies: asked.lies,
    cooling: cooling.value,
    soilResistivity: resistivity.value,
    limits: "value",
    gap: asked.gap,
  };
}

/** Air of a temperature (K) at the altitude asked for. */
export const airAt = (asked: Asked, temperature: number): AirState => ({
  pressure: standardAir(asked.altitude).pressure,
  temperature,
});
