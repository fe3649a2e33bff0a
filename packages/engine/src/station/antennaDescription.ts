/** An antenna in the words of the station file. engine/antenna turns it into wires. Types only. */
import type { LineEntry } from "../lines/lineModel";
import type { Quantity } from "../quantity/quantity";
import type { Lumped } from "./path";
import type { Conductor, Place } from "./place";

export interface Antenna {
  /** "antenna" when the file has one without a name. */
  readonly name: string;
  /** One shape, or several on one feed point (`elements`), each with its name (the shape's kind when it has none). */
  readonly shapes: readonly { readonly name: string; readonly shape: Shape }[];
  /** Explicit feeds; empty: the shape knows its own, which bears the antenna's name. */
  readonly feeds: readonly Feed[];
  /** Name of a wire, a conductor of the surroundings or an earth; or one of the two fixed words; null when not given. */
  readonly against: string | "radials" | "outside of the line" | null;
  readonly radials: Radials | null;
  readonly loads: readonly Load[];
  /** Lines and networks between feeds of this antenna, or across them; none when left out. */
  readonly joined?: readonly Joined[];
  /** Spot on the ground below the feed or base. */
  readonly at: Place;
}

export interface Feed {
  readonly name: string;
  readonly at: Place;
  readonly from: string;
  readonly into: string;
}

/** What lies between two feeds, or across one: in parallel with what else is joined there. `from` is the feed at its near end. */
export type Joined =
  | {
      readonly line: LineEntry;
      readonly length: Quantity;
      readonly from: string;
      readonly farEnd: JoinedFeed | "open" | "shorted";
    }
  /** Coil, capacitor, resistor: one after the other between two feeds, beside each other across one. */
  | { readonly component: Lumped; readonly from: string; readonly farEnd: JoinedFeed | "across" };

export interface JoinedFeed {
  readonly feed: string;
  readonly crossed: boolean;
}

export interface Radials {
  readonly count: number;
  readonly length: Quantity;
  readonly wire: Conductor;
  /** Height in m, negative under the surface; "on the soil". */
  readonly lie: Quantity | "on the soil";
  /** Sector they cover in radians clockwise from north. */
  readonly over: { readonly from: number; readonly to: number };
  readonly bond: string | null;
}

export interface Load {
  readonly kind: "coil" | "capacitor" | "resistor" | "trap" | "series" | "parallel" | "hat";
  readonly component: Lumped | null;
  /** F across a coil; none when left out. */
  readonly selfCapacitance?: Quantity | null;
  readonly hat: {
    readonly spokes: number;
    readonly length: Quantity;
    readonly wire: Conductor;
    readonly ring: boolean;
  } | null;
  readonly on: string;
  /** Metres along the wire from the feed to its middle, or the wire's end. */
  readonly fromFeed: Quantity | "end";
  /** Its own length along the wire, m. */
  readonly length: Quantity | null;
}

export interface Span {
  readonly height: Quantity;
  /** Null: level with the feed point. */
  readonly endsHeight: Quantity | null;
  readonly sag: Quantity;
  /** Azimuth of the first leg, radians clockwise from north. */
  readonly direction: Quantity;
  readonly wire: Conductor;
}

export type Shape =
  | ({ readonly kind: "dipole"; readonly length: Quantity } & Span)
  | {
      readonly kind: "inverted vee";
      readonly length: Quantity;
      readonly height: Quantity;
      readonly endsHeight: Quantity;
      readonly direction: Quantity;
      readonly wire: Conductor;
    }
  | ({ readonly kind: "off-centre dipole"; readonly legs: readonly [Quantity, Quantity] } & Span)
  | {
      readonly kind: "folded dipole";
      readonly length: Quantity;
      readonly spacing: Quantity;
      readonly height: Quantity;
      readonly direction: Quantity;
      readonly wire: Conductor;
    }
  | { readonly kind: "end-fed wire"; readonly points: readonly Place[]; readonly wire: Conductor }
  | {
      readonly kind: "vertical";
      readonly base: Quantity;
      readonly sections: readonly { readonly length: Quantity; readonly wire: Conductor }[];
    }
  | {
      readonly kind: "loop";
      readonly corners: readonly Place[];
      readonly fedAt: { readonly corner: number } | { readonly side: number };
      readonly wire: Conductor;
    }
  | {
      readonly kind: "small loop";
      readonly round: Quantity;
      readonly height: Quantity;
      readonly plane: Quantity;
      readonly wire: Conductor;
      readonly capacitor: { readonly from: number; readonly to: number; readonly q: Quantity };
      readonly jointsResistance: Quantity | null;
    }
  | {
      readonly kind: "beam";
      readonly elements: readonly {
        readonly length: Quantity;
        readonly along: Quantity;
        /** Of either half, from the boom outwards; what is left to the tip is the beam's wire. All of it when left out. */
        readonly sections?: readonly { readonly length: Quantity; readonly wire: Conductor }[];
      }[];
      /** Counted from the back, from 1. */
      readonly driven: number;
      readonly height: Quantity;
      readonly boom: Quantity;
      readonly wire: Conductor;
      readonly boomCorrection: "insulated" | "none";
    }
  | {
      readonly kind: "wires";
      readonly wires: readonly {
        readonly name: string;
        readonly from: Place;
        readonly to: Place;
        readonly wire: Conductor;
        /** Straight when left out. */
        readonly hangs?: Hanging;
      }[];
    };

/** How a wire hangs between its ends: as long as stated (m), or drawn with a horizontal pull (N) at its weight (N/m). */
export type Hanging =
  | { readonly kind: "length"; readonly length: Quantity }
  | { readonly kind: "tension"; readonly tension: Quantity; readonly weight: number };
