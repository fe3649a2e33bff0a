/** The mistaken idea that `listen` corrects, refuted by this station's own numbers. English. */
import { decibels } from "../quantity/format";
import type { ListenFacts } from "./listen";

const idea = "“A decibel taken by the cable is a decibel less heard.”";
const told = (x: number): string => (x < 0.005 ? "less than 0.01 dB" : decibels(x));

export function listenMistakenIdea(f: ListenFacts): { readonly idea: string; readonly refutation: string } {
  const start = `${f.named ? "On" : "At"} ${f.where},`;
  if (f.pathLoss < 0.05) {
    const refutation = `${start} nothing between antenna and receiver takes more than ${told(Math.max(f.pathLoss, 0.01))}; 1 dB more would take as much from the noise of ${Math.round(f.external)} dB that comes with the signal.`;
    return { idea, refutation };
  }
  if (f.cost < 0.8 * f.pathLoss) {
    const refutation = `${start} ${told(f.pathLoss)} are taken on the way, but from signal and noise alike: what is heard falls by ${told(f.cost)}.`;
    return { idea, refutation };
  }
  if (f.cost > 1.05 * f.pathLoss) {
    const refutation = `${start} it is more: ${told(f.pathLoss)} are taken on the way, and ${told(f.cost)} of signal over noise go, because so little noise comes from outside.`;
    return { idea, refutation };
  }
  const refutation = `${start} that is nearly true, ${told(f.pathLoss)} taken and ${told(f.cost)} less heard; where more noise comes from outside, as on lower bands, it is not.`;
  return { idea, refutation };
}
