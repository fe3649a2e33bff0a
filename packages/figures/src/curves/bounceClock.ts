/** When each moment of the film is shown, and the bar of time below it. */
import type { Mark } from "../kit/figure";
import { plainText } from "../kit/numberText";
import { type BounceFilm, timeText } from "./bounceFacts";
import type { ChartOptions } from "./chartTypes";

/** Seconds for one moment, moments for which the last one before a cut is held, and for which the end is. */
export const pace = { moment: 0.1, atCut: 8, atEnd: 15 };

export interface Beat {
  readonly moment: number;
  /** Moments since the start of the film as it is shown. */
  readonly at: number;
}

/** When each moment is shown; held before time is left out, and at the end. */
export function beatsOf({ times, cut }: BounceFilm): readonly Beat[] {
  const beats: Beat[] = [];
  let at = 0;
  for (let moment = 0; moment < times.length; moment++) {
    if (moment === cut) {
      at += pace.atCut;
      beats.push({ moment: moment - 1, at });
    }
    beats.push({ moment, at });
    at++;
  }
  return [...beats, { moment: times.length - 1, at: at - 1 + pace.atEnd }];
}

export interface Bar {
  readonly y: number;
  readonly x: (at: number) => number;
}

/** Ticks for every way along the line, and the part in which all stays as it is. */
export function timeBar(
  film: BounceFilm,
  { width, scale: s }: Required<ChartOptions>,
  top: number,
): { readonly bar: Bar; readonly marks: readonly Mark[] } {
  const beats = beatsOf(film);
  const last = beats[beats.length - 1]!.at;
  const [left, right] = [42 * s, width - 10 * s];
  const bar: Bar = { y: top + 12 * s, x: (at) => left + ((right - left) * at) / last };
  const shown = film.cut ?? film.times.length;
  const stride = film.times[1]! - film.times[0]!;
  const ways = Math.floor(film.times[shown - 1]! / film.oneWay);
  const every = Math.max(1, Math.ceil(ways / 8));
  const soft = { role: "ink2", size: 13 * s, anchor: "middle", face: "numbers" } as const;
  const line = (x1: number, y1: number, x2: number, y2: number): Mark => ({
    kind: "line",
    x1,
    y1,
    x2,
    y2,
    stroke: { role: "line", width: 1.2 * s },
  });
  const ticks = Array.from({ length: Math.floor(ways / every) + 1 }, (_, i) => i * every).flatMap((way): Mark[] => {
    const x = bar.x((way * film.oneWay) / stride);
    const text = way === 0 ? "on" : plainText(way, 0);
    return [line(x, bar.y - 4 * s, x, bar.y + 4 * s), { kind: "text", ...soft, x, y: bar.y + 20 * s, text }];
  });
  const words = `ways along the line, ${timeText(film.oneWay)} each`;
  const stays: Mark[] =
    film.cut === null
      ? []
      : [
          {
            kind: "text",
            ...soft,
            x: bar.x(film.cut + pace.atCut),
            y: bar.y + 20 * s,
            anchor: "start",
            text: "as it stays",
          },
        ];
  return {
    bar,
    marks: [
      line(left, bar.y, right, bar.y),
      ...ticks,
      ...stays,
      {
        kind: "text",
        x: left,
        y: bar.y + 38 * s,
        text: words,
        role: "ink",
        size: 13 * s,
        anchor: "start",
        face: "numbers",
      },
    ],
  };
}
