import { distanceChart } from "../../curves/nearbyDistance";
import { nearbyCurrents } from "../../patterns/nearbyCurrents";
import { nearbyPattern } from "../../patterns/nearbyPattern";
import { exampleNearby } from "../exampleNearby";
import type { FigureExample } from "./example";

export const examples: readonly FigureExample[] = [
  { builder: "distanceChart", name: "nearby-distance", draw: () => distanceChart(exampleNearby(), { width: 520 }) },
  {
    builder: "distanceChart",
    name: "nearby-distance-phone",
    draw: () => distanceChart(exampleNearby(), { width: 320 }),
  },
  { builder: "nearbyCurrents", name: "nearby-currents", draw: () => nearbyCurrents(exampleNearby(), { width: 520 }) },
  {
    builder: "nearbyCurrents",
    name: "nearby-currents-phone",
    draw: () => nearbyCurrents(exampleNearby(), { width: 320 }),
  },
  { builder: "nearbyPattern", name: "nearby-pattern", draw: () => nearbyPattern(exampleNearby(), { width: 520 }) },
];
