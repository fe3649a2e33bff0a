/** What a joint says above the ribbon, from full to short. */
import type { Joint } from "@feedpath/engine";
import { impedanceText, plainText, swrText, voltsText, wattsText, withUnit } from "../kit/numberText";

export interface JointWords {
  readonly name: string;
  /** From full to short; the reference stays. */
  readonly wordings: readonly string[];
  /** For compact pictures, from full to short. */
  readonly compact: readonly string[];
  readonly swr: number | null;
}

/** "SWR 1.8 on 50 Ω". */
export const swrOnText = ({ swr }: Joint): string =>
  `SWR\u00a0${swrText(swr.value)} on ${withUnit(plainText(swr.reference, 1), "Ω")}`;

export function jointWords(joint: Joint): JointWords {
  const { re, im } = joint.impedance;
  const swr = swrOnText(joint);
  const volts = voltsText(joint.voltage.rms);
  return {
    name: joint.name,
    wordings: [
      `${swr} · ${impedanceText(re, im, 1)} · ${volts}`,
      `${swr} · ${impedanceText(re, im, 0)} · ${volts}`,
      `${swr} · ${volts}`,
      swr,
    ],
    compact: [swr, `SWR\u00a0${swrText(joint.swr.value)}`],
    swr: joint.swr.value,
  };
}

/** Several feed points at the end of a split path: the watts of each; power that comes back says so. */
export function feedPointsWords(joints: readonly Joint[]): JointWords {
  const each = joints.map(({ name, power }) => {
    const short = name.replace(/^feed point ?/, "");
    return power < 0 ? `${short} ${wattsText(-power)} back` : `${short} ${wattsText(power)}`;
  });
  const text = each.join(", ");
  return { name: "feed points", wordings: [text], compact: [text], swr: null };
}
