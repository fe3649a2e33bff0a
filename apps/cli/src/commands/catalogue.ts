import type { Station } from "@feedpath/engine";
import { compareLines, type LineUnits, linesList, linesText, listLines } from "@feedpath/report";
import { catalogueVersion, lineCatalogue } from "@feedpath/station-file";
import { Option } from "commander";
import { chosenLines } from "../catalogue/chosenLines";
import { conditionsOf } from "../catalogue/conditions";
import { linesPage } from "../catalogue/linesPage";
import { checkPlaceForFile, replaceFile } from "../files/replaceFile";
import { stationFrom } from "../files/stationFrom";
import { exitStatus } from "../tell/exitStatus";
import type { Terminal } from "../tell/terminal";
import { version } from "../tell/version";
import { type AddCommand, examples } from "./command";

interface CatalogueOptions {
  readonly at?: readonly string[];
  readonly length?: string;
  readonly units: LineUnits;
  readonly station?: string;
  readonly page?: string;
}

async function catalogue(names: readonly string[], options: CatalogueOptions, terminal: Terminal): Promise<number> {
  if (options.page !== undefined) checkPlaceForFile(options.page);
  const station: Station | null = options.station === undefined ? null : (await stationFrom(options.station)).station;
  const all = listLines(station, lineCatalogue);
  const chosen = names.length > 0 ? chosenLines(names, all) : all;
  const comparison = compareLines(chosen, conditionsOf(options.at ?? [], options.length, station));
  if (options.page !== undefined) {
    const worked = `Worked out by Feedpath ${version}, catalogue ${catalogueVersion}.`;
    replaceFile(options.page, linesPage(chosen, comparison, options.units, worked));
    terminal.remark(`Wrote ${chosen.length === 1 ? "the line" : `${chosen.length} lines`} to ${options.page}.`);
  }
  if (terminal.json) {
    const lines = chosen.map(({ entry, family, own }) => ({ ...entry, family, own }));
    terminal.printJson({ catalogue: catalogueVersion, lines, compared: comparison });
  } else if (names.length > 0) terminal.print(linesText(comparison, options.units));
  else {
    const count = `${chosen.length} feed lines, catalogue version ${catalogueVersion}.`;
    const more = "One with its sources, or several beside each other: feedpath catalogue RG-213/U RG-58C/U";
    terminal.print(`${count}\n\n${linesList(comparison, options.units)}\n\n${more}`);
  }
  return exitStatus.answered;
}

const collect = (value: string, before: readonly string[] = []): readonly string[] => [...before, value];

export const addCatalogue: AddCommand = (program, terminal, done) => {
  program
    .command("catalogue")
    .summary("list the feed lines that a file can name, or compare some")
    .description("Lists the feed lines of the catalogue. With names: their constants, loss, ratings, and every source.")
    .argument("[lines...]", "designations; quotes keep one of several words together")
    .option("--at <frequency>", "frequency to look at; several make the table of losses; repeatable", collect)
    .option("--length <length>", "length of the run")
    .option("--station <file>", "list its own lines too, and take frequency and length from it")
    .addOption(
      new Option("--units <units>", "of lengths and weights").choices(["metric", "imperial"]).default("metric"),
    )
    .option("--page <file.html>", "write the lines as a self-contained page; up to four are drawn")
    .option("--json", "print one JSON document: { catalogue, lines, compared }")
    .option("--quiet", "no remarks")
    .addHelpText(
      "after",
      examples(
        ["feedpath catalogue", "all, by family"],
        ["feedpath catalogue RG-213/U", "one, with every source"],
        ['feedpath catalogue RG-213/U "450-ohm window line" --at "7.1 MHz" --length "30 m"', ""],
        ["feedpath catalogue RG-213/U RG-58C/U --page lines.html", "a page to read, print or send"],
      ),
    )
    .action(async (names: string[], options: CatalogueOptions) => done(await catalogue(names, options, terminal)));
};
