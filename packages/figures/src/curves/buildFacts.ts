/** What both pictures of a line's constants need. */
import type { Answer, Table } from "@feedpath/engine";
import { optionalNumber, requiredColumn } from "../kit/answerValues";
import type { Vertical } from "./chartTypes";
import { frequencyText, placeOf } from "./frequencyAxis";

/** "RG-213/U". */
export const designationOf = (answer: Answer): string => {
  const name = answer.parameters.designation;
  return typeof name === "string" ? name : "the line";
};

export const hasColumn = (table: Table, name: string): boolean => table.columns[name] !== undefined;

/** Numbers of a column that are there. */
export const given = (table: Table, name: string): number[] =>
  requiredColumn(table, name).values.filter((value): value is number => value !== null);

/** The frequency asked for, and the cut-off where the picture ends with it. */
export function frequencyLines(answer: Answer): Vertical[] {
  const megahertz = answer.frequency / 1e6;
  const cutOff = optionalNumber(answer, "cutOff");
  return [
    { at: placeOf(megahertz), text: frequencyText(megahertz), main: true },
    ...(cutOff === null
      ? []
      : [{ at: placeOf(1e3 * cutOff), text: `second mode from ${frequencyText(1e3 * cutOff)}`, main: false }]),
  ];
}

/** At most so many ticks of frequency fit, px. */
export const ticksFor = (width: number, scale: number): number => Math.max(3, Math.floor(width / (72 * scale)));
