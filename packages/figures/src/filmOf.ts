/** Which answers have a film, by question: pictures that follow each other in time. */
import type { Answer } from "@feedpath/engine";
import { animatedBounce } from "./curves/bounceAnimated";
import { bounceFilm, momentSays } from "./curves/bounceFacts";
import { bounceFrame, filmLength } from "./curves/bounceFrame";
import type { ChartOptions } from "./curves/chartTypes";
import type { Figure } from "./kit/figure";

export interface FigureFilm {
  readonly moments: number;
  /** "142 ns, 1 way along the line", for a moment from 0 on. */
  readonly says: (moment: number) => string;
  readonly frame: (moment: number, options: ChartOptions) => Figure;
  /** One SVG that moves by itself, without a script. */
  readonly svg: (options: ChartOptions) => string;
}

const filmsByQuestion: Readonly<Record<string, (answer: Answer) => FigureFilm>> = {
  bounce: (answer) => ({
    moments: filmLength(answer),
    says: (moment) => momentSays(bounceFilm(answer), moment),
    frame: (moment, options) => bounceFrame(answer, moment, options),
    svg: (options) => animatedBounce(answer, options),
  }),
};

/** Null for an answer without a film. */
export const filmOf = (answer: Answer): FigureFilm | null => filmsByQuestion[answer.question]?.(answer) ?? null;
