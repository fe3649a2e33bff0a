/** Coils, capacitors and resistors: fixed and adjustable. */
import { type Adjustable, exactly, type Lumped, type Quantity } from "@feedpath/engine";
import type { FilePart } from "../schema/parts";
import { fault, fill } from "./build";
import { noLoss, type Spot } from "./spot";

type Range = { readonly range: { readonly from: number; readonly to: number }; readonly Q?: Quantity | undefined };

export function adjustable(spot: Spot, written: Range | undefined, key: string): Adjustable | null {
  if (!written) return null;
  return { from: written.range.from, to: written.range.to, q: quality(spot, written.Q, `${key}.q`, key) };
}

/** The Q of a component; without one it is lossless, which is listed. */
export function quality(spot: Spot, written: Quantity | undefined, key: string, what: string): Quantity {
  return fill<Quantity>(spot.build, written, {
    place: `${spot.place}.${key}`,
    name: `Q of the ${what} of ${spot.name}`,
    value: exactly(Number.POSITIVE_INFINITY, "assumed"),
    says: "lossless",
    reason: noLoss,
  });
}

type FileLumped = Extract<FilePart, { readonly series: unknown }>["series"];

export function lumpedOf(spot: Spot, written: FileLumped, key = "component"): Lumped {
  const none = exactly(Number.POSITIVE_INFINITY);
  const nothing: Lumped = { coil: null, capacitor: null, resistor: null, q: none };
  if ("resistor" in written) return { ...nothing, resistor: written.resistor };
  if ("coil" in written) return { ...nothing, coil: written.coil, q: quality(spot, written.Q, `${key}.q`, "coil") };
  return { ...nothing, capacitor: written.capacitor, q: quality(spot, written.Q, `${key}.q`, "capacitor") };
}

interface FileCircuit {
  readonly coil?: Quantity | undefined;
  readonly capacitor?: Quantity | undefined;
  readonly resistor?: Quantity | undefined;
  readonly Q?: Quantity | undefined;
}

/** Several components under one key; at least one of them stands there. */
export function circuit(spot: Spot, { coil, capacitor, resistor, Q }: FileCircuit, key: string): Lumped {
  if (!coil && !capacitor && !resistor) {
    const message = "A circuit holds at least one of coil, capacitor and resistor.";
    spot.build.report([...spot.path, key], "value", fault(message, "coil, capacitor or resistor"));
  }
  const lossless = exactly(Number.POSITIVE_INFINITY);
  const q = coil || capacitor ? quality(spot, Q, "component.q", coil ? "coil" : "capacitor") : lossless;
  return { coil: coil ?? null, capacitor: capacitor ?? null, resistor: resistor ?? null, q };
}
