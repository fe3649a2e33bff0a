import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readStation } from "./readStation";

const folder = new URL("../../../examples/", import.meta.url);
const examples = readdirSync(folder).filter((name) => name.endsWith(".yaml"));
const readFile = (name: string) => readFileSync(new URL(name, folder), "utf8");

describe("every example", () => {
  it("is there", () => {
    expect(examples.length).toBeGreaterThanOrEqual(11);
  });

  it.each(examples)("%s is read without a problem, and what is written reads back equal", (fileName) => {
    const first = readStation(readFile(fileName), { fileName, readFile });
    expect(first.problems).toEqual([]);
    const second = readStation(first.normalised, { fileName, readFile });
    expect(second.problems).toEqual([]);
    expect(second.station).toEqual(first.station);
    expect(second.normalised).toBe(first.normalised);
  });
});
