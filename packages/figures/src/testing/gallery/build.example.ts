import { buildAttenuation } from "../../curves/buildAttenuation";
import { buildImpedance } from "../../curves/buildImpedance";
import { exampleBuild } from "../exampleBuild";
import type { FigureExample } from "./example";

export const examples: readonly FigureExample[] = [
  { builder: "buildImpedance", name: "build-impedance", draw: () => buildImpedance(exampleBuild(), { width: 520 }) },
  {
    builder: "buildImpedance",
    name: "build-impedance-phone",
    draw: () => buildImpedance(exampleBuild(false), { width: 320 }),
  },
  {
    builder: "buildAttenuation",
    name: "build-attenuation",
    draw: () => buildAttenuation(exampleBuild(), { width: 520 }),
  },
  {
    builder: "buildAttenuation",
    name: "build-attenuation-phone",
    draw: () => buildAttenuation(exampleBuild(false), { width: 320 }),
  },
];
