import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { questions, starters } from "@feedpath/engine";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { exampleNames, exampleText } from "../files/examples";
import { optionName } from "../parameters/optionName";
import { runInProcess as feedpath } from "../testing/runInProcess";

let cwd = "";
beforeAll(() => {
  cwd = mkdtempSync(join(tmpdir(), "feedpath-commands-"));
});
afterAll(() => rmSync(cwd, { recursive: true }));

const at = (name: string): string => join(cwd, name);

describe("feedpath", () => {
  it("explains itself, with examples to type", async () => {
    const { status, out } = await feedpath("--help");
    expect(status).toBe(0);
    expect(out).toContain("feedpath begin mine.yaml");
  });

  it.each(["ask", "check", "questions", "catalogue", "begin", "schema"])(
    "explains %s, with examples to type",
    async (name) => {
      const { status, out, err } = await feedpath(name, "--help");
      expect({ status, err }).toEqual({ status: 0, err: "" });
      expect(out).toContain(`Usage: feedpath ${name}`);
      expect(out).toMatch(new RegExp(`Examples:\\n {2}feedpath ${name}`));
    },
  );

  it("names every question and every parameter in the help of ask", async () => {
    const { out } = await feedpath("ask", "--help");
    for (const { id, parameters } of questions) {
      expect(out).toMatch(new RegExp(`^ {2}${id} `, "m"));
      for (const parameter of parameters) expect(out).toContain(optionName(parameter));
    }
  });

  it("explains itself on standard error, and ends with 2, when no command is given", async () => {
    const { status, out, err } = await feedpath();
    expect({ status, out }).toEqual({ status: 2, out: "" });
    expect(err).toContain("Usage: feedpath");
  });

  it("leads from a question's id to the command", async () => {
    const id = questions[0]?.id ?? "";
    const { status, err } = await feedpath(id, "mine.yaml");
    expect(status).toBe(2);
    expect(err).toContain(`feedpath ask ${id} mine.yaml`);
  });
});

describe("feedpath begin", () => {
  it("copies an example and never touches a file that exists", async () => {
    const first = await feedpath("begin", at("mine.yaml"));
    expect(first.status).toBe(0);
    expect(readFileSync(join(cwd, "mine.yaml"), "utf8")).toBe(exampleText("harbour-school-club"));
    writeFileSync(join(cwd, "mine.yaml"), "changed");
    const second = await feedpath("begin", at("mine.yaml"));
    expect(second.status).toBe(2);
    expect(second.err).toContain("left as it is");
    expect(readFileSync(join(cwd, "mine.yaml"), "utf8")).toBe("changed");
  });

  it("knows its examples and their nearest names", async () => {
    const { status, err } = await feedpath("begin", at("other.yaml"), "--from", "harbour-school-clup");
    expect(status).toBe(2);
    expect(err).toContain('Did you mean "harbour-school-club"?');
    for (const name of exampleNames()) expect(err).toContain(name);
  });

  it("writes a usual antenna, which checks without problems", async () => {
    const { status } = await feedpath("begin", at("l.yaml"), "--antenna", "inverted L", "--frequency", "7.1MHz");
    expect(status).toBe(0);
    expect(readFileSync(join(cwd, "l.yaml"), "utf8")).toContain("station: Inverted L for 7.1 MHz");
    expect((await feedpath("check", at("l.yaml"))).out).toContain("has no problems");
  });

  it("prints the text where no file is named", async () => {
    const { status, out } = await feedpath("begin", "--antenna", "dipole", "--frequency", "14.2 MHz");
    expect(status).toBe(0);
    expect(out).toContain("frequency: 14.2 MHz");
  });

  it.each([
    [["--antenna", "invertd L", "--frequency", "7.1 MHz"], 'Did you mean "inverted L"?'],
    [["--antenna", "dipole"], "Say for which frequency"],
    [["--antenna", "dipole", "--frequency", "7.1"], "MHz"],
    [["--antenna", "dipole", "--frequency", "137 kHz"], "1 MHz"],
    [["--antenna", "dipole", "--frequency", "7.1 MHz", "--from", "rooftop-flat"], "not both"],
    [["--frequency", "7.1 MHz"], "goes with an antenna"],
  ])("tells what is wrong with %j", async (options, message) => {
    const { status, err } = await feedpath("begin", at("none.yaml"), ...options);
    expect(status).toBe(2);
    expect(err).toContain(message);
  });

  it("lists every antenna in its help", async () => {
    const { out } = await feedpath("begin", "--help");
    for (const { name } of starters) expect(out).toContain(name);
  });
});

describe("feedpath check", () => {
  it("finds nothing wrong with a right file and lists what is taken, in words and in JSON", async () => {
    writeFileSync(join(cwd, "right.yaml"), exampleText("harbour-school-club"));
    const words = await feedpath("check", at("right.yaml"));
    expect(words.status).toBe(0);
    expect(words.out).toContain("has no problems");
    const document = JSON.parse((await feedpath("check", at("right.yaml"), "--json")).out);
    expect(document.problems).toEqual([]);
    expect(document.station).toContain("Harbour school club");
  });

  it("tells the problems of a wrong one", async () => {
    writeFileSync(join(cwd, "wrong.yaml"), exampleText("harbour-school-club").replace("28 m", "28 metre"));
    const { status, out } = await feedpath("check", at("wrong.yaml"), "--json");
    expect(status).toBe(2);
    const { problems } = JSON.parse(out);
    expect(problems).toHaveLength(1);
    expect(problems[0].file).toBe(at("wrong.yaml"));
  });
});

describe("feedpath questions, catalogue, schema", () => {
  it("list every question and every line, in words and in JSON", async () => {
    const words = await feedpath("questions");
    for (const { id, asked } of questions) expect(words.out).toContain(`${id}: ${asked}`);
    const document = JSON.parse((await feedpath("questions", "--json")).out);
    expect(document.questions.map(({ id }: { id: string }) => id)).toEqual(questions.map(({ id }) => id));
    expect((await feedpath("catalogue")).out).toContain("RG-213/U");
    expect(JSON.parse((await feedpath("catalogue", "--json")).out).lines.length).toBeGreaterThan(5);
  });

  it.each(["station", "answer"])("print the JSON Schema of a %s", async (of) => {
    const { status, out } = await feedpath("schema", of);
    expect(status).toBe(0);
    expect(JSON.parse(out).$schema).toContain("json-schema.org");
  });
});
