/** What `line` takes for granted of lines that are not there yet. */
import type { Answer } from "../../answer/answer";
import { decibels } from "../../quantity/format";
import type { Findings } from "./findings";
import { conversionLoss } from "./swapped";

export function ownAssumptions({ bench, ranked }: Findings): Answer["assumptions"] {
  const place = "path";
  const others = ranked.filter((one) => !one.candidate.present);
  const convertedHere = others.some((one) => one.candidate.standing === "converted");
  const { side, part } = bench.replaced;
  return [
    ...(others.length > 0
      ? [
          {
            name: "other lines",
            value: "new, dry, as long and as warm as the present one",
            reason: "they are not there yet",
            place,
          },
        ]
      : []),
    ...(convertedHere && side === "coaxial"
      ? [
          {
            name: "pair lines between coaxial joints",
            value: `two conversions: a transformer to the line's impedance before ${part.name} and one back behind it, ${decibels(conversionLoss.value)} each (${decibels(conversionLoss.low)} to ${decibels(conversionLoss.high)})`,
            reason: "a pair wants equal currents in its wires (common practice, no source)",
            place,
          },
        ]
      : []),
    ...(convertedHere && side === "balanced"
      ? [
          {
            name: "coaxial lines in the place of the pair",
            value: "fed unbalanced, with a choke at the antenna that lets nothing pass outside and takes no power",
            reason: "a coaxial line on a balanced antenna carries current on its outside without one",
            place,
          },
        ]
      : []),
  ];
}
