import { answerJsonSchema } from "@feedpath/report";
import { stationSchema } from "@feedpath/station-file";
import { Argument } from "commander";
import { exitStatus } from "../tell/exitStatus";
import { type AddCommand, examples } from "./command";

export const addSchema: AddCommand = (program, terminal, done) => {
  program
    .command("schema")
    .summary("print the JSON Schema of station files or answers")
    .description(
      "Prints the JSON Schema of a station file (for editors that complete and check) or of an answer (--json).",
    )
    .addArgument(new Argument("<of>", "which one").choices(["station", "answer"]))
    .option("--json", "the same: a schema is JSON")
    .addHelpText("after", examples(["feedpath schema station > station.schema.json", ""]))
    .action((of: string) => {
      terminal.printJson(of === "station" ? stationSchema() : answerJsonSchema());
      done(exitStatus.answered);
    });
};
