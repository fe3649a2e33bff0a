import type { Refusal } from "@feedpath/engine";
import { visibleLine } from "../words/visible";
import { wrapped } from "./layout";

/** A refusal (exit 3) as plain text: what cannot be answered, why, and what would make it answerable. */
export function refusalText(refusal: Refusal): string {
  const lines = [
    wrapped(`“${visibleLine(refusal.asked)}” cannot be answered for ${visibleLine(refusal.station)}.`),
    wrapped(visibleLine(refusal.refused.why)),
    wrapped(`To make it answerable: ${visibleLine(refusal.refused.wouldMakeItAnswerable)}`),
  ];
  return `${lines.join("\n")}\n`;
}
