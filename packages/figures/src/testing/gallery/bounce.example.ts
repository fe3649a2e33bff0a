import { bounceEnergy } from "../../curves/bounceEnergy";
import { bounceFrame } from "../../curves/bounceFrame";
import { bounceLattice } from "../../curves/bounceLattice";
import { bounceMoments } from "../../curves/bounceMoments";
import { standingChart } from "../../curves/bounceStanding";
import { startChart } from "../../curves/bounceStart";
import { exampleBounce, exampleBounceStep } from "../exampleBounce";
import type { FigureExample } from "./example";

export const examples: readonly FigureExample[] = [
  { builder: "bounceMoments", name: "bounce-moments", draw: () => bounceMoments(exampleBounce(), { width: 520 }) },
  {
    builder: "bounceMoments",
    name: "bounce-moments-phone",
    draw: () => bounceMoments(exampleBounce(), { width: 320 }),
  },
  { builder: "bounceLattice", name: "bounce-lattice", draw: () => bounceLattice(exampleBounce(), { width: 520 }) },
  {
    builder: "bounceLattice",
    name: "bounce-lattice-phone",
    draw: () => bounceLattice(exampleBounce(), { width: 320 }),
  },
  { builder: "standingChart", name: "bounce-standing", draw: () => standingChart(exampleBounce(), { width: 520 }) },
  { builder: "startChart", name: "bounce-start", draw: () => startChart(exampleBounceStep(), { width: 520 }) },
  { builder: "bounceEnergy", name: "bounce-energy", draw: () => bounceEnergy(exampleBounce(), { width: 520 }) },
  { builder: "bounceFrame", name: "bounce-frame", draw: () => bounceFrame(exampleBounce(), 27, { width: 520 }) },
  { builder: "bounceFrame", name: "bounce-frame-phone", draw: () => bounceFrame(exampleBounce(), 27, { width: 320 }) },
];
