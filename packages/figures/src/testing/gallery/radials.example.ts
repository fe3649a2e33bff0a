import { radialCutsChart } from "../../curves/radialCuts";
import { radialLengthChart, radialNumber } from "../../curves/radialPanels";
import { radialSpokes } from "../../patterns/radialCurrents";
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
  { builder: "radialCutsChart", name: "radial-cuts", draw: () => radialCutsChart(exampleRadials(), { width: 520 }) },
  {
    builder: "radialCutsChart",
    name: "radial-cuts-phone",
    draw: () => radialCutsChart(exampleRadials(), { width: 320 }),
  },
  { builder: "radialSpokes", name: "radial-currents", draw: () => radialSpokes(exampleRadials(1.6), { width: 520 }) },
  {
    builder: "radialSpokes",
    name: "radial-currents-phone",
    draw: () => radialSpokes(exampleRadials(), { width: 320 }),
  },
];
