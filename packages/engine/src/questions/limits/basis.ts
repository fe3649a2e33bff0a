/** What the answer to `limits` takes for granted and leaves out. */
import type { Answer } from "../../answer/answer";
import type { ResolvedEdge } from "../../chain/resolve";
import { plainNumber } from "../../quantity/format";
import { connectorClass } from "../../stress/connectors";
import { decidingLimit, lineVoltageLimits } from "../../stress/lineVoltage";
import { modulations } from "../../stress/modulation";
import { capital } from "../../words/phrases";
import { minutes } from "../../words/stress";
import { partName } from "./facts";
import { lyingOf } from "./lineHeat";
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

/** Kinds of parts that carry the whole power and for which a limit could be told. */
const withoutLimit = new Set([
  "filter",
  "balun",
  "transformer",
  "tuner",
  "choke",
  "stub",
  "two-port",
  "series",
  "across",
  "connector",
  "switch",
  "band splitter",
]);

export function ownNotCovered(study: Study): string[] {
  const { worked, facts, lines } = study;
  const { point } = worked;
  const limited = new Set(facts.map((fact) => fact.part));
  const unseen = unseenChokes(study);
  const none = point.parts
    .filter(
      ({ edge }) => edge.inUse && withoutLimit.has(edge.kind) && !limited.has(edge.name) && !unseen.has(edge.name),
    )
    .map(({ edge }) => told(study, edge));
  const unbuilt = lines.filter(({ heat }) => heat === null).map(({ part }) => partName(study, part.edge.name));
  const unrated = lines.filter(
    ({ part }) =>
      part.edge.part?.kind === "line" &&
      decidingLimit(lineVoltageLimits(part.edge.part.line, study.conditions.air)) === null,
  );
  return [
    ...(none.length > 0
      ? [
          `No limit is known for: ${none.join(", ")}. \`heat limit\` or \`voltage limit\` in the file would bring them in.`,
        ]
      : []),
    ...(unseen.size > 0
      ? [
          `${capital([...unseen].map((name) => partName(study, name)).join(", "))}: the heat comes from currents on the outside of the line, which are worked out where the file gives the line's \`route\`.`,
        ]
      : []),
    ...(unbuilt.length > 0
      ? [`${capital(unbuilt.join(", "))}: how it is built is not known, so its temperature is not worked out.`]
      : []),
    ...(unrated.length > 0
      ? [
          `${capital(unrated.map(({ part }) => partName(study, part.edge.name)).join(", "))}: neither a voltage rating nor a build is known, so no voltage limit is told.`,
        ]
      : []),
    ...(point.parts.some(({ edge }) => edge.inUse && edge.kind === "tuner")
      ? [
          "Voltages and currents on the coil and the capacitors inside the tuner: not computed yet. They can be higher than at its joints, in a T network above all.",
        ]
      : []),
    ...connectorsBeyond(study),
    ...(point.parts.some(({ edge }) => edge.inUse && (edge.kind === "transformer" || edge.kind === "balun"))
      ? [
          "Temperature, flux and voltage inside the cores and windings of transformers and baluns: only the heat limit of the file is held against their heat.",
        ]
      : []),
    ...(point.resolved.feedsInUse.length > 1
      ? ["The table along the lines follows one branch of the path only; all branches are judged."]
      : []),
    "Heat of currents on the outside of lines, of neighbours that warm each other, and of contacts that have corroded.",
    "Ice, salt, soot, insects and sharp ends: they lower the voltage at which air lets go, by an amount nobody can tell beforehand.",
  ];
}

/** Chokes with a heat limit on lines whose outside is not in the model. */
function unseenChokes({ worked: { point }, facts }: Study): ReadonlySet<string> {
  const names = point.parts.flatMap(({ edge }) =>
    edge.inUse && edge.part?.kind === "choke" && edge.part.heatLimit ? [edge.name] : [],
  );
  return new Set(names.filter((name) => !facts.some((fact) => fact.part === name)));
}

/** Classes of connectors used above the frequencies they are made for. */
function connectorsBeyond(study: Study): string[] {
  const { point } = study.worked;
  const beyond = point.parts.flatMap(({ edge }) => {
    const known = edge.inUse && edge.part?.kind === "connector" ? connectorClass(edge.part.series) : null;
    return known && point.frequency > known.upTo ? [partName(study, edge.name)] : [];
  });
  return beyond.length > 0
    ? [`${capital(beyond.join(", "))}: used above the frequencies of its class, where its loss and heat are not known.`]
    : [];
}

const told = (study: Study, { name }: ResolvedEdge): string => partName(study, name);
