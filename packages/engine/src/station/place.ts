/** Where things are and what wire they are made of. Types only. */
import type { Quantity } from "../quantity/quantity";

/** East, north, up in metres. */
export type Place = readonly [Quantity, Quantity, Quantity];

/** Round wire: outer diameter of the metal (m), its metal, its insulation. */
export interface Conductor {
  readonly diameter: Quantity;
  readonly form: "wire" | "tube";
  readonly material: string;
  readonly conductivity: number;
  readonly permeability: number;
  readonly insulation: { readonly material: string; readonly wall: Quantity; readonly permittivity: Quantity } | null;
}
