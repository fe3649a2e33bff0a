/** A figure as data: what to draw, and what it says to those who do not see it. No DOM, no theme: colours are roles. */

/** Roles of colour (docs/look.md); a renderer maps them to a theme. */
export type Role =
  | "paper"
  | "rail"
  | "ink"
  | "ink2"
  | "line"
  | "hair"
  | "power"
  | "powerInk"
  | "powerTint"
  | "onPower"
  | "heat"
  | "heatInk"
  | "heatTint"
  | "field"
  | "fieldInk"
  | "fieldTint"
  | "soil"
  | "soilInk"
  | "note";

export interface Stroke {
  readonly role: Role;
  readonly width: number;
  readonly dash?: string;
}

export interface Fill {
  readonly role: Role;
  readonly opacity?: number;
  /** Second code beside the hue, drawn on the tint of the role (heat and field only): heat hatched at 45 degrees, field dotted. */
  readonly pattern?: "hatch" | "dots";
  /** Fades to nothing (the stroke of the mark too), or to another role, from `start` to `end`: y (down) or x (right) in px. */
  readonly fade?: {
    readonly to: Role | "none";
    readonly direction: "down" | "right";
    readonly start: number;
    readonly end: number;
  };
  /** Radial fade from centre opacity to edge opacity (lobes); centre in figure coordinates. */
  readonly radial?: {
    readonly cx: number;
    readonly cy: number;
    readonly r: number;
    readonly centre: number;
    readonly edge: number;
  };
}

/** `id` equals a part or joint name where the mark stands for one; `datum` points at a row of the figure's table. */
interface MarkBase {
  readonly id?: string;
  readonly datum?: { readonly series: string; readonly index: number };
}

export type Mark =
  | (MarkBase & { readonly kind: "path"; readonly d: string; readonly fill?: Fill; readonly stroke?: Stroke })
  | (MarkBase & {
      readonly kind: "line";
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly stroke: Stroke;
    })
  | (MarkBase & {
      readonly kind: "rect";
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly radius?: number;
      readonly fill?: Fill;
      readonly stroke?: Stroke;
    })
  | (MarkBase & {
      readonly kind: "circle";
      readonly cx: number;
      readonly cy: number;
      readonly r: number;
      readonly fill?: Fill;
      readonly stroke?: Stroke;
    })
  | (MarkBase & {
      readonly kind: "text";
      readonly x: number;
      readonly y: number;
      readonly text: string;
      readonly role: Role;
      readonly size: number;
      readonly weight?: 400 | 600 | 700;
      readonly italic?: boolean;
      readonly anchor?: "start" | "middle" | "end";
      readonly face: "words" | "numbers";
      /** Width of the halo in the given role, drawn under the letters where they cross something. */
      readonly halo?: { readonly role: Role; readonly width: number };
    })
  | (MarkBase & { readonly kind: "group"; readonly marks: readonly Mark[] });

export interface FigureTable {
  readonly caption: string;
  readonly columns: readonly { readonly name: string; readonly unit: string }[];
  readonly rows: readonly (readonly (string | number | null)[])[];
}

export interface Figure {
  readonly name: string;
  /** The message with its number; set as text above the picture, not inside it. */
  readonly title: string;
  readonly width: number;
  readonly height: number;
  /** Size of type and strokes against the desktop page (1); patterns keep it. Left out: 1. */
  readonly scale?: number;
  readonly marks: readonly Mark[];
  readonly description: string;
  readonly table: FigureTable;
}
