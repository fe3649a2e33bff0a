import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Answer } from "@feedpath/engine";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Terminal } from "../tell/terminal";
import { writeFilm, writeFrames } from "./handOverFilm";

const remarks: string[] = [];
const terminal = { remark: (text: string) => remarks.push(text) } as unknown as Terminal;
let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "feedpath-film-"));
});
afterAll(() => rmSync(folder, { recursive: true }));

/** Two moments of a line with three places; as little of an answer as a film needs. */
const answer = (question: string): Answer => {
  const grid = (name: string, unit: string) => ({
    name,
    rows: { name: "time", unit: "ns", values: [0, 50] },
    columns: { name: "distance", unit: "m", values: [0, 5, 10] },
    value: name,
    unit,
    values: [
      [0, 0, 0],
      [1, -0.5, 0],
    ],
  });
  return {
    question,
    asked: "What happens?",
    headline: "Much.",
    parameters: { shows: "waves", cut: null },
    values: { oneWayTime: { value: 50, unit: "ns" } },
    grids: [
      grid("waveForward", "V"),
      grid("waveReflected", "V"),
      grid("voltageOnLine", "V"),
      grid("currentOnLine", "A"),
    ],
  } as unknown as Answer;
};

describe("handing over a film", () => {
  it("writes an SVG that moves", () => {
    const file = join(folder, "film.svg");
    writeFilm(file, answer("bounce"), terminal);
    expect(readFileSync(file, "utf8")).toMatch(/^<svg[^>]*xmlns=[\s\S]*<animate [\s\S]*<\/svg>$/);
    expect(remarks.at(-1)).toContain("2 moments");
  });

  it("writes numbered pictures into a folder it makes", async () => {
    const frames = join(folder, "new", "frames");
    await writeFrames(frames, answer("bounce"), terminal);
    expect(readdirSync(frames).sort()).toEqual(["bounce-1.png", "bounce-2.png"]);
    const png = readFileSync(join(frames, "bounce-1.png"));
    expect([...png.subarray(0, 4)]).toEqual([0x89, 0x50, 0x4e, 0x47]);
  });

  it("refuses an answer without a film, and a folder that is a file", async () => {
    expect(() => writeFilm(join(folder, "x.svg"), answer("watts"), terminal)).toThrow();
    const file = join(folder, "taken");
    writeFileSync(file, "");
    await expect(writeFrames(file, answer("bounce"), terminal)).rejects.toThrow();
  });
});
