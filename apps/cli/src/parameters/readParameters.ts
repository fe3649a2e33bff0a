import type { ParameterDefinition, Parameters, Problem, Question } from "@feedpath/engine";
import { commandProblem } from "../tell/commandProblem";
import { ProblemsFound } from "../tell/problemsFound";
import { optionName } from "./optionName";
import { readParameter } from "./readParameter";

function foreign(question: Question, name: string): Problem {
  const own = question.parameters.map(optionName);
  const has = own.length > 0 ? `It has ${own.join(", ")}.` : "It has no parameters.";
  const place = optionName({ name });
  return commandProblem({
    place,
    found: place,
    expected: own.join(", "),
    message: `The question "${question.id}" has no ${place}. ${has}`,
  });
}

/**
 * The parameters of one question from the options given. `all` is every question's; an option of another question is a
 * problem and not ignored. Throws ProblemsFound with all problems at once.
 */
export function readParameters(
  question: Question,
  all: readonly ParameterDefinition[],
  options: Readonly<Record<string, unknown>>,
): Parameters {
  const problems: Problem[] = [];
  const parameters: Record<string, Parameters[string]> = {};
  for (const { name } of all) {
    const text = options[name];
    if (typeof text !== "string") continue;
    const definition = question.parameters.find((parameter) => parameter.name === name);
    const read = definition ? readParameter(definition, text) : { problem: foreign(question, name) };
    if ("problem" in read) problems.push(read.problem);
    else parameters[name] = read.value;
  }
  if (problems.length > 0) throw new ProblemsFound(problems);
  return parameters;
}
