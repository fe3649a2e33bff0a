import { trimLadder } from "../../curves/trimLadder";
import { trimLengths } from "../../curves/trimLengths";
import { exampleTrim } from "../exampleTrim";
import type { FigureExample } from "./example";

export const examples: readonly FigureExample[] = [
  { builder: "trimLengths", name: "trim-lengths", draw: () => trimLengths(exampleTrim(), { width: 520 }) },
  { builder: "trimLengths", name: "trim-lengths-phone", draw: () => trimLengths(exampleTrim(), { width: 320 }) },
  { builder: "trimLadder", name: "trim-ladder", draw: () => trimLadder(exampleTrim(), { width: 520 }) },
  { builder: "trimLadder", name: "trim-ladder-phone", draw: () => trimLadder(exampleTrim(), { width: 320 }) },
  { builder: "trimLadder", name: "trim-ladder-legs", draw: () => trimLadder(exampleTrim(true), { width: 520 }) },
  { builder: "trimLadder", name: "trim-ladder-legs-phone", draw: () => trimLadder(exampleTrim(true), { width: 320 }) },
];
