/** Which band of the station a question is asked for. */
import type { Band, Station } from "../../station/station";
import type { Parameters } from "./question";

/** The band named by the parameter `band`, else the first; null with the names there are when none is called so. */
export function bandOf(
  station: Station,
  parameters: Parameters,
): Band | { readonly refused: string; readonly mend: string } {
  const asked = parameters.band;
  const first = station.bands[0];
  if (!first) return { refused: "the station names no frequency", mend: "`frequency:` in the file" };
  if (asked === undefined) return first;
  const found = station.bands.find((b) => b.name === asked);
  const names = station.bands.map((b) => b.name).filter((n) => n !== "");
  return (
    found ?? {
      refused: `the station has no band "${String(asked)}"`,
      mend: names.length > 0 ? `one of: ${names.join(", ")}` : "no band at all: the file has one band without a name",
    }
  );
}
