import { readdirSync, readFileSync } from "node:fs";
import Ajv2020 from "ajv/dist/2020";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { stationSchema } from "./jsonSchema";

const folder = new URL("../../../../examples/", import.meta.url);
const examples = readdirSync(folder).filter((name) => name.endsWith(".yaml"));
const valid = new Ajv2020({ allowUnionTypes: true, strict: false }).compile(stationSchema());
const example = (name: string) => parse(readFileSync(new URL(name, folder), "utf8"), { version: "1.2" });

describe("the JSON Schema of the station file", () => {
  it("is the one that is shipped (else run: node tools/run.mjs tools/writeSchemas.ts)", () => {
    const shipped = readFileSync(new URL("../../station-file.schema.json", import.meta.url), "utf8");
    expect(JSON.parse(shipped)).toEqual(JSON.parse(JSON.stringify(stationSchema())));
  });

  it.each(examples)("accepts %s as an editor sees it", (name) => {
    const good = valid(example(name));
    expect(valid.errors ?? []).toEqual([]);
    expect(good).toBe(true);
  });

  it.each([
    ["an unknown key", (station: Record<string, unknown>) => ({ ...station, frequenzy: "7 MHz" })],
    ["a missing unit", (station: Record<string, unknown>) => ({ ...station, frequency: 7.1 })],
    ["a wrong unit", (station: Record<string, unknown>) => ({ ...station, frequency: "7.1 m" })],
    [
      "two kinds in one part",
      (station: Record<string, unknown>) => ({
        ...station,
        path: [{ line: "RG-213/U", length: "1 m", choke: "1 ohm" }],
      }),
    ],
    ["a part without its length", (station: Record<string, unknown>) => ({ ...station, path: [{ line: "RG-213/U" }] })],
    ["no path", ({ path: _, ...station }: Record<string, unknown>) => station],
  ])("refuses %s", (_, change) => {
    expect(valid(change(example("harbour-school-club.yaml")))).toBe(false);
  });
});
