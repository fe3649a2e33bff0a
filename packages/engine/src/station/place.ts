/** Where things are and what wire they are made of. Types only. */
import type { Metal } from "../lines/lineModel";
import type { Quantity } from "../quantity/quantity";

/** East, north, up in metres. */
export type Place = readonly [Quantity, Quantity, Quantity];

/** Round wire: outer diameter of the metal (m), its metal at the surface, its insulation. */
export interface Conductor {
  readonly diameter: Quantity;
  readonly form: "wire" | "tube";
  readonly material: string;
  readonly conductivity: number;
  readonly permeability: number;
  /** The surface metal is `thickness` metres thick, over a core of another. Left out: one metal throughout. */
  readonly cladding?: { readonly thickness: number; readonly core: Metal };
  /** Of a tube, m; left out: many skin depths. */
  readonly wall?: Quantity;
  readonly insulation: Insulation | null;
}

export interface Insulation {
  readonly material: string;
  readonly wall: Quantity;
  readonly permittivity: Quantity;
  /** None when left out. */
  readonly lossTangent?: Quantity;
}
