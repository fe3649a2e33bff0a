/** What the answer to `limits` leaves out. */
import type { WorkedPart } from "../../chain/workedPoint";
import { connectorClass } from "../../stress/connectors";
import { decidingLimit, lineVoltageLimits } from "../../stress/lineVoltage";
import { capital } from "../../words/phrases";
import { partName } from "./facts";
import type { Study } from "./study";

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

const always = [
  "Heat of currents on the outside of lines, of neighbours that warm each other, and of contacts that have corroded.",
  "Ice, salt, soot, insects and sharp ends: they lower the voltage at which air lets go, by an amount nobody can tell beforehand.",
];

export const ownNotCovered = (study: Study): string[] => [
  ...partsWithoutLimit(study),
  ...linesNotKnown(study),
  ...insideParts(study),
  ...always,
];

/** One sentence about parts by their names; none about no part. */
const about = (study: Study, parts: readonly WorkedPart[], says: (names: string) => string): string[] =>
  parts.length === 0 ? [] : [says(parts.map((part) => partName(study, part.edge.name)).join(", "))];

const usedParts = ({ worked: { point } }: Study): WorkedPart[] => point.parts.filter((part) => part.edge.inUse);

function partsWithoutLimit(study: Study): string[] {
  const limited = new Set(study.facts.map((fact) => fact.part));
  const open = usedParts(study).filter(({ edge }) => withoutLimit.has(edge.kind) && !limited.has(edge.name));
  const unseen = ({ edge }: WorkedPart): boolean => edge.part?.kind === "choke" && edge.part.heatLimit !== null;
  return [
    ...about(
      study,
      open.filter((part) => !unseen(part)),
      (names) =>
        `No limit is known for: ${names}. \`heat limit\` or \`voltage limit\` in the file would bring them in.`,
    ),
    ...about(
      study,
      open.filter(unseen),
      (names) =>
        `${capital(names)}: the heat comes from currents on the outside of the line, which are worked out where the file gives the line's \`route\`.`,
    ),
  ];
}

function linesNotKnown(study: Study): string[] {
  const unbuilt = study.lines.filter(({ heat }) => heat === null).map(({ part }) => part);
  const unrated = study.lines.flatMap(({ part }) => {
    const line = part.edge.part;
    if (line?.kind !== "line") return [];
    return decidingLimit(lineVoltageLimits(line.line, study.conditions.air)) === null ? [part] : [];
  });
  const branched = study.worked.point.resolved.feedsInUse.length > 1;
  return [
    ...about(
      study,
      unbuilt,
      (names) => `${capital(names)}: how it is built is not known, so its temperature is not worked out.`,
    ),
    ...about(
      study,
      unrated,
      (names) => `${capital(names)}: neither a voltage rating nor a build is known, so no voltage limit is told.`,
    ),
    ...(branched ? ["The table along the lines follows one branch of the path only; all branches are judged."] : []),
  ];
}

function insideParts(study: Study): string[] {
  const used = usedParts(study);
  const has = (...kinds: readonly string[]): boolean => used.some(({ edge }) => kinds.includes(edge.kind));
  const beyond = used.filter(({ edge: { part } }) => {
    const known = part?.kind === "connector" ? connectorClass(part.series) : null;
    return known !== null && study.worked.point.frequency > known.upTo;
  });
  return [
    ...(has("tuner")
      ? [
          "Voltages and currents on the coil and the capacitors inside the tuner: not computed yet. They can be higher than at its joints, in a T network above all.",
        ]
      : []),
    ...about(
      study,
      beyond,
      (names) => `${capital(names)}: used above the frequencies of its class, where its loss and heat are not known.`,
    ),
    ...(has("transformer", "balun")
      ? [
          "Temperature, flux and voltage inside the cores and windings of transformers and baluns: only the heat limit of the file is held against their heat.",
        ]
      : []),
  ];
}
