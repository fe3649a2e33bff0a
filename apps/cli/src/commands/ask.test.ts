import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { answerSchema, problemsSchema } from "@feedpath/report";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { exampleText } from "../files/examples";
import { runFeedpath } from "../testing/runFeedpath";

const harbour = exampleText("harbour-school-club");
let cwd = "";
beforeAll(() => {
  cwd = mkdtempSync(join(tmpdir(), "feedpath-ask-"));
  writeFileSync(join(cwd, "harbour.yaml"), harbour);
});
afterAll(() => rmSync(cwd, { recursive: true }));

const ask = (args: string, more: Omit<Parameters<typeof runFeedpath>[1], "cwd"> = {}) =>
  runFeedpath(["ask", ...args.split(" ")], { cwd, ...more });

describe("feedpath ask, answered", () => {
  it("prints the answer in words, without colour codes, and ends with 0", async () => {
    const { status, out, err } = await ask("watts harbour.yaml --quiet");
    expect(err).toBe("");
    expect(status).toBe(0);
    expect(out).toContain("Harbour school club");
    expect(out).not.toContain("\u001b[");
  });

  it("prints exactly one JSON document, which keeps to the schema", async () => {
    const { status, out } = await ask("watts harbour.yaml --json --quiet");
    expect(status).toBe(0);
    const answer = answerSchema.parse(JSON.parse(out));
    expect(answer.question).toBe("watts");
    expect(answer.figures.map(({ name }) => name)).toEqual(["stage"]);
    expect(answer.provenance.program).toMatch(/^\d/);
    expect(answer.provenance.file).toMatch(/^[0-9a-f]{64}$/);
  });

  it("answers a file from standard input with the same numbers", async () => {
    const [named, piped] = await Promise.all([
      ask("watts harbour.yaml --json"),
      ask("watts - --json", { input: harbour }),
    ]);
    expect(piped.out).toBe(named.out);
  });

  it("takes a question's parameters in the units people write", async () => {
    const { out, err } = await ask("band harbour.yaml --swr-below 1.7 --json --figure swr-across-band.svg");
    expect(err).toContain('Wrote the figure "swrAcrossBand"');
    expect(answerSchema.parse(JSON.parse(out)).parameters.swrBelow).toBe(1.7);
  });

  it("writes sheet and figures, says so, and leaves nothing else behind", async () => {
    mkdirSync(join(cwd, "out"));
    writeFileSync(join(cwd, "out", "sheet.html"), "old");
    const { status, err } = await ask(
      "watts harbour.yaml --sheet out/sheet.html --figure out/first.svg --figure out/stage.svg",
    );
    expect(status).toBe(0);
    expect(err).toContain("out/sheet.html");
    expect(readdirSync(join(cwd, "out")).sort()).toEqual(["first.svg", "sheet.html", "stage.svg"]);
    expect(readFileSync(join(cwd, "out", "sheet.html"), "utf8")).toMatch(/^<!doctype html>/i);
    expect(readFileSync(join(cwd, "out", "stage.svg"), "utf8")).toMatch(/^<svg /);
  });
});

describe("feedpath ask, wrong file or command", () => {
  it("tells every problem of a file with its place, writes nothing, and ends with 2", async () => {
    const broken = harbour.replace("28 m", "28").replace("7.1 MHz", "7.1 MHx");
    const { status, out, err } = await ask("watts - --sheet never.html", { input: broken });
    expect(status).toBe(2);
    expect(out).toBe("");
    expect(err).toMatch(/standard input:\d+:\d+/);
    expect(err).toContain("2 problems");
    expect(readdirSync(cwd)).not.toContain("never.html");
  });

  it("tells a mistake in the command as one JSON document too", async () => {
    const { status, out, err } = await ask("wats harbour.yaml --json");
    expect({ status, err }).toEqual({ status: 2, err: "" });
    const [problem] = problemsSchema.parse(JSON.parse(out)).problems;
    expect(problem).toMatchObject({ place: "question", found: "wats", nearest: "watts" });
  });
});
