/** Tables of pairs: two coaxial lines side by side, and wires closer or wider apart. */
import type { Column, Table } from "../../answer/answer";
import { column, columnOver, counted } from "../common/columns";
import type { Findings } from "./findings";

export function twinTable({ twins }: Findings): Table[] {
  if (twins.length === 0) return [];
  return [
    {
      name: "sideBySide",
      axis: "pair",
      labels: twins.map((t) => `two ${t.name}`),
      columns: {
        pair: counted(twins.length),
        impedance: columnOver(twins, "ohm", (t) => t.impedance),
        matchedLoss: columnOver(twins, "dB", (t) => t.matched),
        lossAtLoad: columnOver(twins, "dB", (t) => t.loss),
        wattsIntoAntenna: columnOver(twins, "W", (t) => t.watts),
        swrSeen: columnOver(twins, "1", (t) => t.swrSeen),
      },
    },
  ];
}

export function spacingTable({ spacings }: Findings): Table[] {
  if (spacings.length === 0) return [];
  const of = (unit: string, value: (s: (typeof spacings)[number]) => number): Column =>
    column(unit, spacings.map(value));
  return [
    {
      name: "pairSpacing",
      axis: "spacing",
      columns: {
        spacing: of("mm", (s) => 1000 * s.spacing),
        wattsIntoAntenna: of("W", (s) => s.watts),
        lossAtLoad: of("dB", (s) => s.loss),
        impedance: of("ohm", (s) => s.impedance),
        highestVoltage: of("V", (s) => s.highestVoltage),
        radiated: of("%", (s) => 100 * s.radiated),
        swrOnLine: of("1", (s) => s.swrOnLine),
      },
    },
  ];
}
