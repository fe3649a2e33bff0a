/** Why this station's antenna has no other height, told before anything is solved. */
import { antennaStructure } from "../../antenna/antennaStructure";
import { heldDown } from "../../chain/lifted";
import type { Station } from "../../station/station";
import { asking } from "../../words/asking";

export function whyHeld(station: Station): { readonly why: string; readonly mend: string } | null {
  const build = antennaStructure(station);
  const held = build.refused ? null : heldDown(build);
  if (held === null) return null;
  const onRadials = station.antennas.some((a) => a.radials !== null);
  const instead = onRadials ? `${asking("radials")} or ${asking("sky")}` : asking("sky");
  const free = held.by === "soil" ? "an antenna with nothing on the soil" : "an antenna that hangs free of it";
  return { why: held.why, mend: `${free}. For this one ask ${instead}` };
}
