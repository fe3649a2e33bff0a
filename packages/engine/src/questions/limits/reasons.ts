/** Every limit with what stands against it, what fails first at the top. */
import type { Answer } from "../../answer/answer";
import { capital } from "../../words/phrases";
import { amount, placeOn, roughWatts } from "../../words/stress";
import { firstFacts } from "./facts";
import type { LimitFact } from "./limitFact";
import type { Study } from "./study";

export const reasonsOf = (study: Study): Answer["reasons"] =>
  study.facts.map((fact) => ({
    says: reasonSays(study, fact),
    value: fact.value,
    limit: fact.limit,
    unit: fact.unit,
    source: fact.source,
  }));

function reasonSays(study: Study, fact: LimitFact): string {
  const told = firstFacts(study, fact);
  const who = told.name === "" ? "The antenna's own wires" : capital(told.name);
  const where = told.at === null || told.length === 0 ? "" : ` ${placeOn(told.at, told.length)}`;
  const power = study.worked.point.powerFromTransmitter * fact.times;
  const when = power < 1e6 ? `: ${told.happens} at ${roughWatts(power)}` : `: ${told.happens} far above any power used`;
  return `${who}, ${amount(fact.value, fact.unit)}${where}${when}`;
}
