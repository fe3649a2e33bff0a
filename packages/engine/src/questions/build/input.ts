/** What `build` works with: the line meant, where, how warm, how long, and what nobody stated. */
import type { Answer } from "../../answer/answer";
import { statedTemperature } from "../../conductors/metalTemperature";
import { significantNumber, withPrefix } from "../../quantity/format";
import type { Station } from "../../station/station";
import { bandOf } from "../common/bandOf";
import type { Context, Parameters } from "../common/question";
import { highestDip } from "./dip";
import { type ChosenLine, chosenLine } from "./parameters";
import { type BuildInput, cutOffOf } from "./study";

type Refused = { readonly refused: string; readonly mend: string };

export function inputOf(station: Station, parameters: Parameters, context: Context): BuildInput | Refused {
  const asked = parameters.line;
  const chosen = chosenLine(station, typeof asked === "string" ? asked : null, context);
  if ("refused" in chosen) return chosen;
  const band = typeof parameters.frequency === "number" ? null : bandOf(station, parameters);
  if (band && "refused" in band) return band;
  const given = (name: string): number | null => (typeof parameters[name] === "number" ? parameters[name] : null);
  const { part } = chosen;
  const warm = part?.kind === "line" ? (part.temperature?.value ?? null) : null;
  return {
    chosen,
    frequency: given("frequency") ?? band?.frequency.value ?? 1e6,
    temperature: given("temperature") ?? warm ?? statedTemperature,
    length: given("length") ?? part?.length.value ?? usualLength,
    power: station.transmitter.power.value,
    excess: part?.kind === "line" ? part.excessLoss.value : 0,
    altitude: station.site?.altitude?.value ?? 0,
    dip: given("dip"),
  };
}

/** m, where neither the file nor the asker says one. */
const usualLength = 10;

/** Above the cut-off of the first higher mode there is no answer. */
export function beyondItsMode({ chosen, frequency }: BuildInput): Refused | null {
  const cutOff = cutOffOf(chosen);
  if (cutOff === null || frequency < cutOff.frequency) return null;
  const end = withPrefix(cutOff.frequency, "Hz");
  return {
    refused: `from ${end} on a second mode (TE11) can travel in ${chosen.entry.designation}; at ${withPrefix(frequency, "Hz")} it has no one set of constants`,
    mend: `a frequency below ${end}`,
  };
}

/** A dip that no first dip of this length can be. */
export function impossibleDip({ dip, length }: BuildInput): Refused | null {
  const highest = highestDip(length);
  if (dip === null || dip <= highest) return null;
  return {
    refused: `a first dip at ${withPrefix(dip, "Hz")} would have the waves run faster than light along ${significantNumber(length, 4)} m`,
    mend: `the first dip, below ${withPrefix(highest, "Hz", 3)}, or the \`length\` that was measured`,
  };
}

export function assumptionsOf(
  station: Station,
  parameters: Parameters,
  { part, entry }: ChosenLine,
): Answer["assumptions"] {
  const temperature = part?.kind === "line" ? part.temperature : null;
  return [
    ...(parameters.length === undefined && part === null
      ? [
          {
            name: "length",
            value: `${usualLength} m`,
            reason: "the line was asked for by its designation, not as a part of the path",
            place: "",
          },
        ]
      : []),
    ...(parameters.temperature === undefined && temperature === null
      ? [
          {
            name: "temperature of the conductors",
            value: "20 °C",
            reason: "the file gives none for this line",
            place: "",
          },
        ]
      : []),
    {
      name: "power",
      value: `${significantNumber(station.transmitter.power.value, 4)} W into the line`,
      reason: "the transmitter's, as if nothing lay between",
      place: "transmitter.power",
    },
    ...(entry.model.kind === "data sheet" && entry.model.loss.length === 1
      ? [
          {
            name: "attenuation at other frequencies",
            value: "by the root of frequency from its one point",
            reason: "one point fixes the conductors alone",
            place: "path",
          },
        ]
      : []),
  ];
}
