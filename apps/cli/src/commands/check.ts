import type { Station } from "@feedpath/engine";
import { stationFrom } from "../files/stationFrom";
import { exitStatus } from "../tell/exitStatus";
import type { Terminal } from "../tell/terminal";
import { type AddCommand, examples } from "./command";

function summary(file: string, { title, assumptions }: Station): string {
  const taken = assumptions.map(({ name, value, reason }) => `  ${name}: ${value}. ${reason}`);
  const rest = taken.length > 0 ? ["Where the file says nothing, this is taken:", ...taken] : [];
  return [`${file}: "${title}" has no problems.`, ...rest].join("\n");
}

async function check(file: string, terminal: Terminal): Promise<number> {
  const { station } = await stationFrom(file);
  if (terminal.json) terminal.printJson({ problems: [], station: station.title, assumptions: station.assumptions });
  else terminal.print(summary(file, station));
  return exitStatus.answered;
}

export const addCheck: AddCommand = (program, terminal, done) => {
  program
    .command("check")
    .summary("say whether a station file is right")
    .description("Reads a station file and tells every problem in it, and what is taken where it says nothing.")
    .argument("<station>", 'station file, or "-" for standard input')
    .option("--json", "print one JSON document: { problems, station, assumptions }")
    .option("--quiet", "no remarks")
    .addHelpText(
      "after",
      examples(["feedpath check mine.yaml", ""], ["feedpath check mine.yaml --json", "for an editor"]),
    )
    .action(async (file: string) => done(await check(file, terminal)));
};
