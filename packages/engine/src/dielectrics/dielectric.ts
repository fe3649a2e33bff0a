/** What lies between conductors. Types only; the sibling files give its complex permittivity at a frequency. */

/** Without the optional members permittivity and loss tangent are the same at every frequency. */
export interface Dielectric {
  readonly name: string;
  /** Relative, real part. */
  readonly permittivity: number;
  readonly lossTangent: number;
  /** Hz at which both hold; elsewhere the permittivity falls slowly with frequency, as a loss that is there at every frequency asks. */
  readonly statedAt?: number;
  /** Loss tangents at further frequencies (Hz, rising): the loss follows them, and the permittivity what causality asks. */
  readonly lossPoints?: readonly { readonly frequency: number; readonly lossTangent: number }[];
  /** Polar molecules, added to the rest: rise of the static permittivity, and frequency (Hz) at which they no longer follow. */
  readonly relaxations?: readonly { readonly strength: number; readonly frequency: number }[];
  /** S/m at direct current: dirty water, carbon. None when left out. */
  readonly conductivity?: number;
  /** K the material bears for long; not known when left out. */
  readonly greatestTemperature?: number;
  /** Where somebody says what it was mixed of: told and written down, never computed with. Shares by volume. */
  readonly madeOf?: Recipe;
}

export type Recipe =
  | { readonly kind: "foam"; readonly solid: string; readonly gas: number }
  | {
      readonly kind: "spacers";
      readonly solid: string;
      readonly form: "discs" | "cord" | "beads";
      readonly filled: number;
    }
  | {
      readonly kind: "wet";
      readonly dry: Dielectric;
      readonly water: number;
      /** S/m of the water; null where nobody says it and the usual was taken. */
      readonly conductivity: number | null;
    };
