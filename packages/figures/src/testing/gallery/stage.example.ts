import { ribbon, section, stage } from "../../stage/stage";
import { exampleAnswer, exampleAround, exampleLongPath, exampleTee, mixes } from "../exampleAnswer";
import type { FigureExample } from "./example";

export const examples: readonly FigureExample[] = [
  { builder: "stage", name: "stage", draw: () => stage(exampleAnswer(), { width: 1112 }) },
  { builder: "stage", name: "stage-phone", draw: () => stage(exampleAnswer(mixes.poor), { width: 320 }) },
  { builder: "stage", name: "stage-long-path", draw: () => stage(exampleLongPath(), { width: 1112 }) },
  { builder: "stage", name: "stage-around", draw: () => stage(exampleAround(), { width: 1112 }) },
  { builder: "ribbon", name: "ribbon", draw: () => ribbon(exampleTee(), { width: 682, scale: 0.8 }) },
  { builder: "section", name: "section", draw: () => section(exampleAnswer(), { width: 682, scale: 0.8 }) },
];
