/** Why this station's antenna has no other height, told before anything is solved. */
import { antennaStructure } from "../../antenna/antennaStructure";
import { heldDown } from "../../chain/lifted";
import type { Station } from "../../station/station";
import { asking } from "../../words/asking";

export function whyHeld(station: Station): { readonly why: string; readonly mend: string } | null {
  const build = antennaStructure(station);
  const held = build.refused ? null : heldDown(build);
  if (held === null) return null;
  return { why: held.why, mend: `an antenna with nothing on the soil. For this one ask ${asking("sky")}` };
}
