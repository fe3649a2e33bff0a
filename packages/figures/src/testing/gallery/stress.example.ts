import { stressAlong } from "../../curves/stressAlong";
import { stressInTime } from "../../curves/stressInTime";
import { exampleStress } from "../exampleStress";
import type { FigureExample } from "./example";

export const examples: readonly FigureExample[] = [
  { builder: "stressAlong", name: "stress-along", draw: () => stressAlong(exampleStress(), { width: 520 }) },
  { builder: "stressAlong", name: "stress-along-far", draw: () => stressAlong(exampleStress(5000), { width: 520 }) },
  { builder: "stressAlong", name: "stress-along-phone", draw: () => stressAlong(exampleStress(), { width: 320 }) },
  { builder: "stressInTime", name: "stress-in-time", draw: () => stressInTime(exampleStress(), { width: 520 }) },
  { builder: "stressInTime", name: "stress-in-time-phone", draw: () => stressInTime(exampleStress(), { width: 320 }) },
];
