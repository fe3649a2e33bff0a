import { alternativeBars, groupsOf } from "../../curves/lineAlternatives";
import { lineBars } from "../../curves/lineBars";
import { lineLengthChart } from "../../curves/lineLength";
import { exampleLine } from "../exampleLine";
import type { FigureExample } from "./example";

export const examples: readonly FigureExample[] = [
  { builder: "lineBars", name: "line-bars", draw: () => lineBars(exampleLine(), { width: 640 }) },
  { builder: "lineBars", name: "line-bars-kept", draw: () => lineBars(exampleLine(true), { width: 560 }) },
  { builder: "lineBars", name: "line-bars-phone", draw: () => lineBars(exampleLine(), { width: 320 }) },
  {
    builder: "alternativeBars",
    name: "line-alternatives",
    draw: () => alternativeBars(exampleLine(), groupsOf(exampleLine()), { width: 640 }),
  },
  {
    builder: "alternativeBars",
    name: "line-alternatives-phone",
    draw: () => alternativeBars(exampleLine(), groupsOf(exampleLine()), { width: 320 }),
  },
  { builder: "lineLengthChart", name: "line-length", draw: () => lineLengthChart(exampleLine(), { width: 520 }) },
  { builder: "lineLengthChart", name: "line-length-phone", draw: () => lineLengthChart(exampleLine(), { width: 320 }) },
];
