/** How the optima of `why` were found, with the numbers put in. */
import type { WorkingStep } from "../../answer/answer";
import { flatSteps, meanStep, standardStep } from "./comparedSteps";
import { asBuiltStep, impedanceStep, limitStep, skinStep } from "./lossSteps";
import { heatStep, powerStep, voltageStep } from "./powerSteps";
import type { WhyResult } from "./result";

export function whyWorking(result: WhyResult): WorkingStep[] {
  return [
    impedanceStep(result),
    ...limitStep(result),
    ...skinStep(result),
    ...asBuiltStep(result),
    ...voltageStep(result),
    ...powerStep(result),
    ...heatStep(result),
    ...flatSteps(result),
    ...meanStep(result),
    ...result.standards.map((point) => standardStep(result, point)),
  ];
}
