/** Our mark: power comes in, a little turns down as heat, the rest leaves as field. */
import type { Figure } from "./figure";

/** The mark as a figure, `height` px high, drawn on a grid of 26 by 14. */
export function mark(height: number): Figure {
  const u = height / 14;
  const at = (x: number, y: number) => `${Math.round(x * u * 100) / 100},${Math.round(y * u * 100) / 100}`;
  return {
    name: "mark",
    title: "Feedpath",
    width: 26 * u,
    height: 14 * u,
    marks: [
      { kind: "path", d: `M${at(0, 0)}L${at(11.5, 0)}L${at(11.5, 10.5)}L${at(0, 13.5)}Z`, fill: { role: "power" } },
      { kind: "path", d: `M${at(11.5, 0)}L${at(26, 0)}L${at(26, 7.4)}L${at(11.5, 7.4)}Z`, fill: { role: "field" } },
      {
        kind: "path",
        d: `M${at(11.5, 9.2)}L${at(18, 9.2)}Q${at(21, 9.2)} ${at(21, 12)}L${at(21, 13.7)}`,
        stroke: { role: "heat", width: 2 * u },
      },
    ],
    description: "The mark of Feedpath.",
    table: { caption: "", columns: [], rows: [] },
  };
}
