import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { exampleText } from "./files/examples";
import { runInProcess } from "./testing/runInProcess";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "feedpath-program-"));
  writeFileSync(join(folder, "harbour.yaml"), exampleText("harbour-school-club"));
});
afterAll(() => rmSync(folder, { recursive: true }));

/** What a person reads after a wrong command. FILE and FOLDER stand for those of the test. */
async function told(command: string): Promise<string> {
  const args = command
    .split(" ")
    .map((word) => word.replace("FILE", join(folder, "harbour.yaml")).replace("FOLDER", folder));
  const { status, out, err } = await runInProcess(...args);
  expect({ status, out }).toEqual({ status: 2, out: "" });
  return err;
}

describe("a wrong command", () => {
  it.each([
    ["a mistyped command", "aks watts FILE", "Did you mean ask?"],
    ["a question in place of a command", "watts FILE", "feedpath ask watts"],
    ["a mistyped question", "ask wats FILE", 'Did you mean "watts"?'],
    ["a missing file", "ask watts FOLDER/nowhere.yaml", "There is no file"],
    ["a missing argument", "ask watts", "feedpath ask --help"],
    ["a mistyped option", "ask watts FILE --quit", "Did you mean --quiet?"],
    ["an option of another question", "ask why FILE --swr-below 2", 'The question "why" has no --swr-below'],
    ["a value without its unit", "ask height FILE --elevation 20", 'For example: --elevation "20 deg"'],
    ["a value out of its range", "ask band FILE --swr-below 0.5", "--swr-below"],
    ["a range for one value", "ask height FILE --elevation 20deg±2deg", "ranges belong in the station file"],
    ["a word that is none of those allowed", "ask why FILE --dielectric polyethilene", 'Did you mean "polyethylene"?'],
    ["a value with a space and no quotes", "ask height FILE --elevation 20 deg", "Put quotes"],
    ["a band the file has not", "ask watts FILE --band 80m", "leave --band out"],
    ["a folder that is not there", "ask watts FILE --sheet FOLDER/no/answer.html", "there is no folder"],
    ["an example that is not there", "begin FOLDER/new.yaml --from harbor", "The examples are"],
    ["a schema of something else", "schema stations", "station"],
  ])("%s is answered with what to do", async (_, command, expected) => {
    expect(await told(command)).toContain(expected);
  });

  it("tells all mistaken parameters at once", async () => {
    const text = await told("ask height FILE --elevation 20 --heights 5m");
    expect(text).toContain("--elevation");
    expect(text).toContain("--heights");
  });
});
