import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const folder = fileURLToPath(new URL("../../../../examples/", import.meta.url));

/** Names of the worked example stations, sorted. */
export const exampleNames = (): readonly string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".yaml"))
    .map((name) => name.slice(0, -".yaml".length))
    .sort();

/** Text of one example, by its name. */
export const exampleText = (name: string): string => readFileSync(`${folder}${name}.yaml`, "utf8");

/** What the example's station is called. */
export const exampleTitle = (name: string): string => /^station: (.*)$/m.exec(exampleText(name))?.[1] ?? "";
