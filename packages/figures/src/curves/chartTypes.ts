/** What a chart is made of: small panels over one shared axis. */
import type { Mark, Role } from "../kit/figure";
import type { LabelBoard } from "../kit/labelBoard";
import type { PanelFrame } from "./panelFrame";

export interface ChartOptions {
  /** Of the picture, px; half the ticks below 360. */
  readonly width: number;
  /** Of type and strokes. Left out: 1. */
  readonly scale?: number;
}

export interface Curve {
  /** Column of the figure's table. */
  readonly series: string;
  readonly values: readonly (number | null)[];
  readonly low?: readonly number[] | undefined;
  readonly high?: readonly number[] | undefined;
  readonly role: Role;
  readonly labelRole: Role;
  /** The second curve of a panel is dashed: never told apart by hue alone. */
  readonly dashed: boolean;
  /** From full to short. */
  readonly labels: readonly string[];
}

/** A point on a curve that carries its number. */
export interface Ring {
  readonly at: number;
  readonly value: number;
  readonly text: string;
  /** For where the text has no room. */
  readonly short?: string;
  /** A small dot whose number stands only where it finds room. Left out: a ring. */
  readonly quiet?: boolean;
}

export interface Panel {
  readonly name: string;
  /** Of the plot, px at scale 1. */
  readonly height: number;
  readonly from: number;
  readonly to: number;
  /** Where the values are not the numbers that are read, such as logarithms. Left out: ticks at round values. */
  readonly ticks?: readonly { readonly value: number; readonly text: string }[];
  readonly curves: readonly Curve[];
  readonly rings: readonly Ring[];
  /** Drawn under the curves; labels it places go before those of the curves. */
  readonly under?: (frame: PanelFrame, board: LabelBoard) => readonly Mark[];
  /** Drawn over the curves; labels it places go before those of the curves. */
  readonly over?: (frame: PanelFrame, board: LabelBoard) => readonly Mark[];
}

/** A line through all panels at a value of the shared axis. */
export interface Vertical {
  readonly at: number;
  readonly text: string;
  readonly main: boolean;
  /** A thin line, for orientation. Left out: false. */
  readonly quiet?: boolean;
}

export interface Chart extends ChartOptions {
  readonly axis: {
    readonly values: readonly number[];
    readonly name: string;
    /** Where the values are not the numbers that are read. Left out: ticks at round values. */
    readonly ticks?: readonly { readonly value: number; readonly text: string }[];
  };
  readonly panels: readonly Panel[];
  readonly verticals: readonly Vertical[];
  /** What the bands of doubt stand for, under the picture; "" for none. */
  readonly note: string;
}
