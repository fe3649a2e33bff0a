import type { Figure } from "../../kit/figure";

/** One picture of the gallery: `builder` names the function that draws it. */
export interface FigureExample {
  readonly builder: string;
  /** Unique; file name of the kept picture. */
  readonly name: string;
  readonly draw: () => Figure;
}
