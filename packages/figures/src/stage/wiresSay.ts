/** What stands for the heat in wires: chokes on the outside of the line count to it, and are named where they matter. */
import type { Answer } from "@feedpath/engine";
import { optionalNumber } from "../kit/answerValues";

/** Share of that heat from which chokes are named. */
const worthNaming = 0.05;

export function wiresSay(answer: Answer): string {
  const [wires, chokes] = [optionalNumber(answer, "heatInWires") ?? 0, optionalNumber(answer, "heatInChokes") ?? 0];
  return chokes > worthNaming * wires ? "wires and chokes" : "wires";
}
