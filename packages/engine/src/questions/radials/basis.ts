/** What the answer to `radials` takes for granted and leaves out, and its cautions. */
import type { Answer } from "../../answer/answer";
import { metres } from "../../quantity/format";
import { lieText, type RadialFacts } from "../../words/radials";
import type { Worked } from "../common/worked";
import type { PlanInput } from "./layouts";
import type { Site } from "./site";
import type { Study } from "./study";

export function ownAssumptions({ point }: Worked, asked: PlanInput, site: Site): Answer["assumptions"] {
  const place = "antennas";
  const reason = "only the radials are asked about";
  const outside = point.antenna.build.outside.length > 0;
  const moved = `the whole antenna moves with its radials between ${lieText(asked.lie)} and ${lieText(asked.otherLie)}`;
  return [
    { place, name: "while the radials change", value: "everything else stays, the antenna is not trimmed", reason },
    {
      place,
      name: "power",
      value: "watts to the sky are of the power that reaches the antenna now",
      reason: "a match can be mended afterwards; what the SWR would be stands beside them",
    },
    { place, name: "raised and laid", value: moved, reason: "radials and foot belong together" },
    ...(outside
      ? [{ place: "path", name: "outside of the line", value: "in the study as the station has it", reason }]
      : []),
    ...(site.earth !== null
      ? [
          {
            place,
            name: site.earth,
            value: "tied to radials on the soil, not to raised ones",
            reason: "raised radials work apart from the soil",
          },
        ]
      : []),
    ...(site.radials
      ? []
      : [
          {
            place,
            name: "radials proposed",
            value: `bare copper, 1.5 mm, ${asked.count} of ${metres(asked.length)}`,
            reason: "the station has none",
          },
        ]),
  ];
}

export function ownNotCovered(study: Study): string[] {
  return [
    "Radials under the soil: not computed yet. The file's “on the soil” stands for wires in the grass.",
    ...(study.tooMany === null ? [] : [`${study.tooMany} and more radials of these lengths: they take too long here.`]),
    ...(study.otherRefused === null ? [] : [`The same wire at the other place: ${study.otherRefused}.`]),
    "Contact of bare wires with the soil, roots, wet grass, and how long a thin wire lasts there.",
  ];
}

export const tripCautions = (f: RadialFacts): string[] =>
  f.now.lie === "on the soil" && f.otherLie === "on the soil"
    ? []
    : [
        "The free ends of raised radials carry high voltage: out of reach of people and animals, and marked where someone may walk into them.",
      ];
