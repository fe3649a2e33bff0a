import { type Question, questions } from "@feedpath/engine";
import { optionName, says, valueForm } from "../parameters/optionName";
import { exitStatus } from "../tell/exitStatus";
import { type AddCommand, examples } from "./command";

function describeQuestion({ id, asked, about, parameters }: Question): string {
  const options = parameters.map(
    (parameter) => `      ${optionName(parameter)} <${valueForm(parameter)}>  ${says(parameter)}`,
  );
  return [`  ${id}: ${asked}`, `      ${about}`, ...options].join("\n");
}

/** Questions under what people say that leads to them. */
function list(): string {
  const groups = [...new Set(questions.map(({ group }) => group))];
  const parts = groups.map((group) => {
    const members = questions.filter((question) => question.group === group);
    return `${group}\n${members.map(describeQuestion).join("\n")}`;
  });
  return parts.join("\n\n");
}

const asData = ({ id, asked, group, about, parameters }: Question) => ({
  id,
  asked,
  group,
  about,
  parameters: parameters.map((parameter) => ({ ...parameter, option: optionName(parameter) })),
});

export const addQuestions: AddCommand = (program, terminal, done) => {
  program
    .command("questions")
    .summary("list the questions that can be asked")
    .description("Lists the questions under what people say that leads to them, with their parameters.")
    .option("--json", "print one JSON document")
    .addHelpText("after", examples(["feedpath questions", ""]))
    .action(() => {
      if (terminal.json) terminal.printJson({ questions: questions.map(asData) });
      else terminal.print(list());
      done(exitStatus.answered);
    });
};
