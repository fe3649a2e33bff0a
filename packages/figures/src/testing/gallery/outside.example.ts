import { outsideAlong } from "../../curves/outsideAlong";
import { chokeChart } from "../../curves/outsideChoke";
import { lengthChart } from "../../curves/outsideLength";
import { exampleOutside } from "../exampleOutside";
import type { FigureExample } from "./example";

export const examples: readonly FigureExample[] = [
  { builder: "outsideAlong", name: "outside-along", draw: () => outsideAlong(exampleOutside(), { width: 520 }) },
  { builder: "outsideAlong", name: "outside-along-phone", draw: () => outsideAlong(exampleOutside(), { width: 320 }) },
  { builder: "chokeChart", name: "outside-choke", draw: () => chokeChart(exampleOutside(), { width: 520 }) },
  { builder: "lengthChart", name: "outside-length", draw: () => lengthChart(exampleOutside(), { width: 520 }) },
];
