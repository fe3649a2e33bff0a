import { radialLengthChart, radialNumber } from "../../curves/radialPanels";
import { exampleRadials } from "../exampleRadials";
import type { FigureExample } from "./example";

export const examples: readonly FigureExample[] = [
  { builder: "radialNumber", name: "radial-number", draw: () => radialNumber(exampleRadials(), { width: 520 }) },
  { builder: "radialNumber", name: "radial-number-phone", draw: () => radialNumber(exampleRadials(), { width: 320 }) },
  {
    builder: "radialLengthChart",
    name: "radial-lengths",
    draw: () => radialLengthChart(exampleRadials(), { width: 520 }),
  },
];
