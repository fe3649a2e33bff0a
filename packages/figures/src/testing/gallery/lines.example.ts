import { type LineLoss, type LossStudy, lineLosses } from "../../curves/lineLosses";
import type { FigureExample } from "./example";

const frequencies = Array.from({ length: 41 }, (_, i) => 1.8e6 * (1e9 / 1.8e6) ** (i / 40));

/** An invented line: dB/m at 10 MHz, of which a part grows with the root of frequency and a tenth with frequency. */
function invented(name: string, at10: number, end = 1e9): LineLoss {
  const loss = frequencies.map((f) => (f > end ? null : at10 * (0.9 * Math.sqrt(f / 1e7) + 0.1 * (f / 1e7))));
  const scaled = (by: number) => loss.map((one) => (one === null ? null : one * by));
  return { name, loss, low: scaled(0.85), high: scaled(1.2) };
}

const study = (lines: readonly LineLoss[]): LossStudy => ({
  frequencies,
  lines,
  run: { says: "100 m", length: 100 },
  at: 14.2e6,
});

const four = study([
  invented("thin line", 0.046),
  invented("50-ohm 6 mm foam cable", 0.026),
  invented("thick line", 0.0205),
  invented("600-ohm open line", 0.002, 1e8),
]);

export const examples: readonly FigureExample[] = [
  { builder: "lineLosses", name: "line-losses", draw: () => lineLosses(four, { width: 640 }) },
  { builder: "lineLosses", name: "line-losses-phone", draw: () => lineLosses(four, { width: 328 }) },
  {
    builder: "lineLosses",
    name: "line-losses-one",
    draw: () => lineLosses(study([invented("thin line", 0.046)]), { width: 520 }),
  },
];
