import type { Progress } from "@feedpath/engine";

/** Work shorter than this says nothing, ms. */
const quietFor = 500;
/** Between two lines where a line cannot be overwritten (a log, a pipe), ms. */
const logEvery = 2000;
const redrawEvery = 100;

export interface ProgressLine {
  readonly show: (progress: Progress) => void;
  /** Takes the line away again. */
  readonly clear: () => void;
}

interface Screen {
  readonly isTTY?: boolean;
  readonly write: (text: string) => unknown;
}

/** Progress on standard error: one line redrawn on a terminal, now and then a line anywhere else, nothing when quiet. */
export function progressLine(
  quiet: boolean,
  screen: Screen,
  now: () => number = () => performance.now(),
): ProgressLine {
  const start = now();
  let next = start + quietFor;
  let width = 0;
  const clear = (): void => {
    if (width > 0) screen.write(`\r${" ".repeat(width)}\r`);
    width = 0;
  };
  const show = ({ done, of, what }: Progress): void => {
    if (quiet || now() < next) return;
    next = now() + (screen.isTTY ? redrawEvery : logEvery);
    const line = `${done} of ${of} ${what}`;
    if (!screen.isTTY) {
      screen.write(`${line}\n`);
      return;
    }
    screen.write(`\r${line.padEnd(width)}`);
    width = line.length;
  };
  return { show, clear };
}
