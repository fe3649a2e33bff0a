/** What stands for the heat in wires, which counts coils, chokes and the like of the antenna too. */
import type { Answer } from "@feedpath/engine";
import { scalar } from "../kit/answerValues";

export const wiresSay = (answer: Answer): string => scalar(answer, "heatInWires")?.says ?? "wires";
