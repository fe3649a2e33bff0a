import { spawn, spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { problemsSchema, refusalSchema } from "@feedpath/report";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { exampleText } from "./files/examples";
import { runFeedpath } from "./testing/runFeedpath";

const root = fileURLToPath(new URL("../../../", import.meta.url));
let cwd = "";
beforeAll(() => {
  cwd = mkdtempSync(join(tmpdir(), "feedpath-main-"));
  writeFileSync(join(cwd, "harbour.yaml"), exampleText("harbour-school-club"));
});
afterAll(() => rmSync(cwd, { recursive: true }));

describe("exit statuses", () => {
  it("3: the question cannot be answered for this station; why, and what would make it answerable", async () => {
    // A wire of several wavelengths in the microwaves is far beyond what the model holds.
    const input = exampleText("harbour-school-club").replaceAll(/7\.[012] MHz/g, (text) => text.replace("MHz", "GHz"));
    const [words, json] = await Promise.all([
      runFeedpath(["ask", "watts", "-"], { cwd, input }),
      runFeedpath(["ask", "watts", "-", "--json"], { cwd, input }),
    ]);
    expect({ status: words.status, out: words.out }).toEqual({ status: 3, out: "" });
    expect(words.err).toContain("To make it answerable");
    expect(json.status).toBe(3);
    expect(refusalSchema.parse(JSON.parse(json.out)).refused.why).not.toBe("");
  });

  it("70: a defect is told as such, with what to report", async () => {
    const planted =
      "import crypto from 'node:crypto'; import { syncBuiltinESMExports } from 'node:module';" +
      "crypto.createHash = () => { throw new Error('planted'); }; syncBuiltinESMExports();";
    const env = { NODE_OPTIONS: `--import data:text/javascript,${encodeURIComponent(planted)}` };
    const { status, out, err } = await runFeedpath(["ask", "watts", "harbour.yaml", "--json"], { cwd, env });
    expect(status).toBe(70);
    expect(problemsSchema.parse(JSON.parse(out)).problems[0]?.message).toContain("defect of Feedpath");
    expect(err).toContain("planted");
    expect(err).toContain("command: feedpath ask watts harbour.yaml --json");
  });

  it.skipIf(process.platform === "win32")("130: interrupted while it computes, and nothing is written", async () => {
    let killed = false;
    // A sweep this wide keeps any machine busy long after its first word of progress.
    const wide = ["ask", "band", "harbour.yaml", "--sweep", "2 MHz to 60 MHz", "--json", "--sheet", "never.html"];
    const { status, out, err } = await runFeedpath(wide, {
      cwd,
      onError: (child) => {
        if (!killed) child.kill("SIGINT");
        killed = true;
      },
    });
    expect(killed, "the work took less than half a second, so no progress was shown").toBe(true);
    expect(status).toBe(130);
    expect(problemsSchema.parse(JSON.parse(out)).problems[0]?.message).toContain("Interrupted");
    expect(err).toContain("Interrupted");
    expect(readdirSync(cwd)).toEqual(["harbour.yaml"]);
  });
});

describe("a reader that closes the pipe", () => {
  it.skipIf(process.platform === "win32")("is no defect", async () => {
    const program = join(root, "apps/cli/bin/feedpath.mjs");
    const child = spawn(process.execPath, [program, "schema", "station"], { cwd });
    child.stdout.destroy();
    let err = "";
    child.stderr.on("data", (chunk: Buffer) => {
      err += chunk.toString();
    });
    const status = await new Promise((resolve) => child.on("close", resolve));
    expect({ status, err }).toEqual({ status: 0, err: "" });
  });
});

describe("npx feedpath", () => {
  it("works from the root of the repository, without a network", () => {
    const { status, stdout } = spawnSync("npx", ["--offline", "feedpath", "--version"], {
      cwd: root,
      encoding: "utf8",
    });
    expect({ status, stdout }).toEqual({ status: 0, stdout: "0.1.0\n" });
  });
});
