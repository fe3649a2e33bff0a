/** What the answer to `limits` takes for granted. */
import type { Answer } from "../../answer/answer";
import { plainNumber } from "../../quantity/format";
import { modulations } from "../../stress/modulation";
import { minutes } from "../../words/stress";
import { lyingOf } from "./lying";
import type { Study } from "./study";

export function ownAssumptions(study: Study): Answer["assumptions"] {
  const { asked, lines } = study;
  const taken = lines.filter(
    ({ part }) => part.edge.part?.kind === "line" && lyingOf(part.edge.part, asked.lies).taken,
  );
  const lying = taken.map(({ part }) =>
    part.edge.part?.kind === "line" ? `${part.edge.name} ${lyingOf(part.edge.part, null).lies}` : "",
  );
  return [
    ...(asked.airTemperature.from === "taken"
      ? [
          {
            place: "site",
            name: "air temperature",
            value: "40 °C",
            reason: "the file does not say; most published power curves are for it",
          },
        ]
      : []),
    ...(lying.length > 0
      ? [
          {
            place: "path",
            name: "how the lines lie",
            value: lying.join(", "),
            reason: "the file does not say: still air in the shade, or the soil where the route leads",
          },
        ]
      : []),
    {
      place: "transmitter.duty",
      name: "mean power while sending",
      value: `${plainNumber(100 * asked.duty.value, 0)} % of peak envelope power`,
      reason: asked.modulation ? modulations[asked.modulation].says : "the file's `duty`",
    },
    { place: "transmitter.onAir", name: "sending", ...sendingSays(study) },
    ...surroundingsSay(study),
    ...lines.flatMap(({ heat }) => heat?.thermal.notes ?? []).map((note) => noteAssumption(note)),
  ];
}

const noteAssumption = (note: string): Answer["assumptions"][number] => {
  const [name, ...rest] = note.split(": ");
  return { place: "path", name: name!, value: rest.join(": "), reason: "its build is not known so far" };
};

function sendingSays({ asked: { sending } }: Study): { readonly value: string; readonly reason: string } {
  if (sending.kind === "endless")
    return { value: "without end", reason: "neither the file nor the question says how long: the warmest case" };
  if (sending.kind === "once") return { value: `once for ${minutes(sending.seconds)}, from cold`, reason: "as asked" };
  return {
    value: `${minutes(sending.rhythm.on)} of every ${minutes(sending.rhythm.of)}, for hours`,
    reason: "the file's `on air`, or as asked",
  };
}

function surroundingsSay({ lines }: Study): Answer["assumptions"] {
  const ways = new Set(lines.flatMap(({ heat }) => (heat ? [heat.lies] : [])));
  const of = (value: string, reason: string) => [{ place: "path", name: "what cools the lines", value, reason }];
  return [
    ...(ways.has("in air") ? of("still air all round, no sun", "no wind that must be relied on") : []),
    ...(ways.has("in the sun")
      ? of("still air and 1000 W/m² of sun square to the line", "IEC 60287-1-1 (from memory)")
      : []),
    ...(ways.has("buried")
      ? of("soil of 20 °C and 1 K m/W, heat stored in it not counted", "IEC 60287-3-1 (from memory); warm side")
      : []),
    ...(ways.has("in a conduit")
      ? of("one line alone in a pipe three times as wide, in the shade", "no convection inside: warm side")
      : []),
    ...(ways.has("on a drum")
      ? of("all of it wound tightly in a ring as deep as wide", "a rough model on the warm side")
      : []),
  ];
}
