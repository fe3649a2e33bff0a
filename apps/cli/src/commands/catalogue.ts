import type { LineEntry, Quantity } from "@feedpath/engine";
import { type CatalogueLine, catalogueVersion, lineCatalogue } from "@feedpath/station-file";
import { exitStatus } from "../tell/exitStatus";
import { type AddCommand, examples } from "./command";

const figures = (value: number): string => `${Number(value.toPrecision(3))}`;

function withRange({ value, low, high }: Quantity, scale = 1): string {
  const range = low < value || high > value ? ` (${figures(low * scale)} to ${figures(high * scale)})` : "";
  return figures(value * scale) + range;
}

function constants({ model }: LineEntry): string {
  if (model.kind !== "data sheet") return `${model.kind}, by its dimensions`;
  const losses = model.loss.map(
    ({ frequency, decibelsPerMetre }) => `${withRange(decibelsPerMetre, 100)} at ${figures(frequency / 1e6)} MHz`,
  );
  return (
    `${model.side}, ${withRange(model.impedance)} ohm, velocity factor ${withRange(model.velocityFactor)}\n` +
    `    loss in dB/100 m: ${losses.join("; ")}`
  );
}

const describeLine = (entry: CatalogueLine): string => {
  const sources = entry.sources.map(({ value, source, status }) => `    ${value}: ${source} (${status})`);
  return [`  ${entry.designation}: ${entry.about}`, `    ${constants(entry)}`, ...sources].join("\n");
};

export const addCatalogue: AddCommand = (program, terminal, done) => {
  program
    .command("catalogue")
    .summary("list the feed lines that a file can name")
    .description("Lists the feed lines of the catalogue with their constants, each value with its source.")
    .option("--json", "print one JSON document")
    .addHelpText("after", examples(["feedpath catalogue", ""]))
    .action(() => {
      if (terminal.json) terminal.printJson({ catalogue: catalogueVersion, lines: lineCatalogue });
      else
        terminal.print(
          `Feed lines of the catalogue, version ${catalogueVersion}\n${lineCatalogue.map(describeLine).join("\n")}`,
        );
      done(exitStatus.answered);
    });
};
