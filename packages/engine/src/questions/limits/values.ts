/** What `limits` adds to the values of an answer, and the margins of its parts. */
import type { PartResult, Value } from "../../answer/answer";
import { scalarValue } from "../common/values";
import { hotFacts, hottestLine } from "./facts";
import { marginOf } from "./limitFact";
import { steadyMatched } from "./rules";
import type { Study } from "./study";
import type { Way } from "./ways";

const wayNames: Readonly<Record<Way["lies"], string>> = {
  "in air": "temperatureInAir",
  "in the sun": "temperatureInSun",
  buried: "temperatureBuried",
  "in a conduit": "temperatureInConduit",
  "on a drum": "temperatureOnDrum",
};

const noBuild = "no line of this path has a build that is known";

export function limitValues(study: Study, ways: readonly Way[]): Record<string, Value> {
  const hot = hotFacts(study);
  const line = hottestLine(study);
  const named = hot ? { says: hot.name } : {};
  const of = (value: number | null | undefined, unit: string): Value => ({
    ...scalarValue(value ?? null, unit, noBuild),
    ...named,
  });
  const byWay = Object.fromEntries(ways.map((way) => [wayNames[way.lies], of(way.temperature, "°C")]));
  return {
    hotSpotHeat: of(hot?.watts, "W/m"),
    hotSpotAt: of(hot?.at, "m"),
    jacketTemperature: of(hot?.jacket, "°C"),
    temperatureIfMatched: of(hot?.matched, "°C"),
    timeConstant: of(hot?.timeConstant, "s"),
    spreadLength: of(line?.heat?.spread, "m"),
    greatestMeanPower: of(line && steadyMatched(study, line.part), "W"),
    fieldAtWires: scalarValue(study.facts.find((fact) => fact.part === "")?.value ?? null, "kV/cm"),
    ...byWay,
  };
}

/** dB of power until the first limit of each part; null where none is known. */
export const withMargins = ({ facts }: Study, parts: readonly PartResult[]): PartResult[] =>
  parts.map((part) => {
    const times = facts.filter((fact) => fact.part === part.name).map((fact) => fact.times);
    return { ...part, margin: times.length > 0 ? marginOf(Math.min(...times)) : null };
  });
