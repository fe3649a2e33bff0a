/** Baluns and transformers: what their few stated numbers allow. */
import { complex } from "../numerics/complex";
import type { BalunPart, TransformerPart } from "../station/path";
import {
  cascade,
  idealTransformer,
  matchedAttenuator,
  seriesImpedance,
  shuntAdmittance,
  type TwoPort,
} from "./twoPort";

/**
 * From the transmitter's side: capacitor across, leakage inductance in series, winding inductance across (all as seen from
 * there), loss, ideal ratio sqrt(transmitter side / antenna side). The loss is a section matched to the rated resistance,
 * half series (copper), half shunt (core): one stated number does not tell them apart, equal parts leave the rated resistance
 * unchanged, and the stated loss holds exactly into it. Into a higher resistance the shunt half grows, as core loss does.
 */
export function transformerTwoPort(part: TransformerPart, omega: number): TwoPort {
  const chain: TwoPort[] = [];
  if (part.capacitor) chain.push(shuntAdmittance(complex(0, omega * part.capacitor.value)));
  if (part.leakageInductance) chain.push(seriesImpedance(complex(0, omega * part.leakageInductance.value)));
  if (part.windingInductance) chain.push(shuntAdmittance(complex(0, -1 / (omega * part.windingInductance.value))));
  return cascade(...chain, ratioWithLoss(part.transmitterSide.value, part.antennaSide.value, part.loss.value));
}

/** Between the wires a balun is its ratio and its loss; what it does to the current on the outside is the antenna model's. */
export const balunTwoPort = (part: BalunPart): TwoPort =>
  ratioWithLoss(part.transmitterSide.value, part.antennaSide.value, part.loss.value);

const ratioWithLoss = (transmitterSide: number, antennaSide: number, loss: number): TwoPort =>
  cascade(matchedAttenuator(loss, transmitterSide), idealTransformer(Math.sqrt(transmitterSide / antennaSide)));
