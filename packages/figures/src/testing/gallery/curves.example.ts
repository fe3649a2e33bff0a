import { heightPanels } from "../../curves/heightPanels";
import { impedanceCompromise } from "../../curves/impedanceCompromise";
import { swrAcrossBand } from "../../curves/swrAcrossBand";
import { exampleBand, exampleHeight, exampleWhy } from "../exampleStudies";
import type { FigureExample } from "./example";

export const examples: readonly FigureExample[] = [
  { builder: "swrAcrossBand", name: "swr-across-band", draw: () => swrAcrossBand(exampleBand(), { width: 520 }) },
  { builder: "heightPanels", name: "height-panels", draw: () => heightPanels(exampleHeight(), { width: 520 }) },
  { builder: "heightPanels", name: "height-panels-phone", draw: () => heightPanels(exampleHeight(), { width: 320 }) },
  {
    builder: "impedanceCompromise",
    name: "impedance-compromise",
    draw: () => impedanceCompromise(exampleWhy(), { width: 520 }),
  },
];
