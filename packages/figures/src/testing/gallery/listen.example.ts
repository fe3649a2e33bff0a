import { listenNoise } from "../../curves/listenNoise";
import { exampleListen } from "../exampleListen";
import type { FigureExample } from "./example";

export const examples: readonly FigureExample[] = [
  { builder: "listenNoise", name: "listen-noise", draw: () => listenNoise(exampleListen(), { width: 520 }) },
  {
    builder: "listenNoise",
    name: "listen-noise-phone",
    draw: () => listenNoise(exampleListen(false), { width: 320 }),
  },
];
