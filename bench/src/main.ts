/**
 * `npm run bench`: every budget that concerns computing, timed by turns with its baseline, and how cost grows.
 * `npm run bench -- solves page` runs those parts only; `-- --write` puts the results into README.md and pictures/.
 */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { toSvg } from "@feedpath/figures";
import { startPython } from "./baseline/python";
import { load, machineText } from "./machine";
import { parts } from "./parts";
import { budgetTable, sectionText } from "./report/markdown";
import { withMarked } from "./report/markedText";
import type { Section } from "./report/section";

const print = (text: string): void => {
  process.stdout.write(`${text}\n`);
};
const at = (path: string): URL => new URL(`../${path}`, import.meta.url);

async function versions(): Promise<string> {
  const python = await startPython("lapack.py");
  python?.end();
  return python ? `${python.versions}.` : "No python3 with numpy and scipy.";
}

function write(text: { readonly budgets: string; readonly results: string }, sections: readonly Section[]): void {
  const page = readFileSync(at("README.md"), "utf8");
  const filled = withMarked(withMarked(page, "budgets", text.budgets), "results", text.results);
  writeFileSync(at("README.md"), filled);
  mkdirSync(at("pictures"), { recursive: true });
  for (const figure of sections.flatMap(({ figures }) => figures)) {
    const svg = toSvg(figure, { theme: "light", idPrefix: figure.name, standalone: true });
    writeFileSync(at(`pictures/${figure.name}.svg`), svg);
  }
}

async function main(): Promise<void> {
  const asked = process.argv.slice(2).filter((word) => !word.startsWith("--"));
  const unknown = asked.filter((word) => !(word in parts));
  if (unknown.length > 0) throw new Error(`no part "${unknown.join(", ")}": expected ${Object.keys(parts).join(", ")}`);
  const writing = process.argv.includes("--write");
  if (writing && asked.length > 0) throw new Error("--write is for the whole bench: the page shows results of one run");
  const loads = [load()];
  const sections: Section[] = [];
  for (const [name, run] of Object.entries(parts)) {
    if (asked.length > 0 && !asked.includes(name)) continue;
    process.stderr.write(`${name} ...\n`);
    const section = await run();
    loads.push(load());
    sections.push(section);
    print(`\n${sectionText(section, "pictures")}\n\n${budgetTable(section.budgets)}`);
  }
  const told = sections.flatMap(({ libraries }) => libraries ?? []);
  const machine = machineText([await versions(), ...told], loads);
  const budgets = `${machine}\n\n${budgetTable(sections.flatMap((section) => section.budgets))}`;
  print(`\n${budgets}`);
  const results = sections.map((section) => sectionText(section, "pictures")).join("\n\n");
  if (writing) write({ budgets, results }, sections);
}

await main();
