import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { availableParallelism } from "node:os";
import { gzipSync } from "node:zlib";
import { questions } from "@feedpath/engine";
import type { BrowserContext, Locator, Page, Worker } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBuiltPage } from "../testing/builtPage.mjs";

const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const doublet = readFileSync(new URL("../../../examples/orchard-doublet.yaml", import.meta.url), "utf8");
/** Compressed script before the first answer, bytes (docs: budgets). */
const scriptBudget = 500_000;

let built: Awaited<ReturnType<typeof openBuiltPage>>;
let context: BrowserContext;
let page: Page;
/** Everything the browser complained of, and every request that left the page's origin. */
const complaints: string[] = [];
const foreign: string[] = [];

function watch(watched: BrowserContext): void {
  watched.on("request", (request) => {
    const { origin, protocol } = new URL(request.url());
    if (!["blob:", "data:", "file:"].includes(protocol) && origin !== new URL(built.address).origin)
      foreign.push(request.url());
  });
  watched.on("console", (message) => {
    if (message.type() === "error") complaints.push(message.text());
  });
  watched.on("weberror", (error) => complaints.push(String(error.error())));
}

const textOf = async (locator: Locator): Promise<string> =>
  ((await locator.textContent()) ?? "").replaceAll("\u00a0", " ");

/** Script that a file of the built page brings in with it; what it loads later by itself is left out. */
async function withImports(address: string, name: string, found: Map<string, string>): Promise<void> {
  if (found.has(name)) return;
  const text = await (await fetch(new URL(`assets/${name}`, address))).text();
  found.set(name, text);
  for (const [, imported] of text.matchAll(/(?:import|from)\s*"\.\/([^"]+\.js)"/g))
    await withImports(address, imported!, found);
}

/** Bytes, compressed, of the page's script and its worker's: what must be there before anything is answered. */
async function scriptBeforeAnswer(address: string): Promise<number> {
  const files = new Map<string, string>();
  const html = await (await fetch(address)).text();
  for (const [, name] of html.matchAll(/assets\/([^"]+\.js)"/g)) await withImports(address, name!, files);
  const [worker] = /host-[\w-]+\.js/.exec([...files.values()].join("")) ?? [];
  if (!worker) throw new Error("the page's script names no worker");
  await withImports(address, worker, files);
  return [...files.values()].reduce((sum, text) => sum + gzipSync(text).length, 0);
}

const settled = (on: Page) => on.locator('.answer[aria-busy="false"], .refused').first().waitFor();

async function violations(on: Page): Promise<string[]> {
  await on.evaluate(axeSource);
  return on.evaluate(async () => {
    const { axe } = globalThis as unknown as { axe: { run: () => Promise<{ violations: Violation[] }> } };
    interface Violation {
      readonly id: string;
      readonly nodes: readonly { readonly html: string }[];
    }
    const found = await axe.run();
    return found.violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
  });
}

beforeAll(async () => {
  built = await openBuiltPage();
  context = await built.browser.newContext({ viewport: { width: 1440, height: 900 }, acceptDownloads: true });
  watch(context);
  context.setDefaultTimeout(15_000);
  // Printing needs a person; what would be printed is noted in the page's own window.
  await context.addInitScript(() => {
    window.print = () => Object.assign(window.top ?? window, { printed: document.title });
  });
  page = await context.newPage();
}, 120_000);
afterAll(() => built?.end());

describe("the built page", () => {
  it("shows an example already answered, with less script than its budget", async () => {
    await page.goto(built.address);
    await page.locator("h1.headline").waitFor();
    await settled(page);
    const size = await scriptBeforeAnswer(built.address);
    expect(await textOf(page.locator("h1.headline"))).toMatch(/\d.*W/);
    expect(await page.locator(".stage svg").count()).toBe(1);
    expect(size).toBeGreaterThan(50_000);
    expect(size).toBeLessThan(scriptBudget);
  });

  /** What the station of the page has nothing for: no route, no radials, nothing near by. */
  const refusedThere = ["outside", "radials", "nearby"];

  it.each(questions.map(({ id, asked, group }) => [id, asked, group] as const))(
    "answers %s, or says what it would need",
    async (id, asked, group) => {
      const button = page.locator(".rail").getByRole("button", { name: asked, exact: true });
      // A group of several questions is closed until it is wanted.
      if ((await button.count()) === 0) await page.locator(".rail h2 button", { hasText: group }).click();
      await button.click();
      await page.locator(".asked", { hasText: asked }).waitFor();
      if (refusedThere.includes(id)) {
        await page.locator(".refused").waitFor();
        expect(await textOf(page.locator(".refused"))).toMatch(/What would make it answerable: ./);
        expect(await violations(page)).toEqual([]);
        return;
      }
      await page.waitForFunction(
        (words) =>
          document.querySelector(".answer:not(.older)[aria-busy=false] h1") &&
          document.querySelector(".asked")?.textContent === words,
        asked,
        { timeout: 90_000 },
      );
      expect((await textOf(page.locator("h1.headline"))).length).toBeGreaterThan(10);
      expect(await page.locator(".steps > li").count()).toBeGreaterThan(1);
      await page.locator(".steps math").first().waitFor();
      expect(await violations(page)).toEqual([]);
    },
    120_000,
  );

  it("goes back to the first question and still has its answer at once", async () => {
    const [first] = questions;
    await page.locator(".rail").getByRole("button", { name: first!.asked, exact: true }).click();
    await page.locator(".stage svg").waitFor();
  });

  it("opens the working of a number in place, and closes it", async () => {
    const number = page.locator("h1 .opens").first();
    await number.click();
    await page.locator(".working-of").waitFor();
    expect(await violations(page)).toEqual([]);
    await number.click();
    expect(await page.locator(".working-of").count()).toBe(0);
  });

  it("saves a sheet that opens on its own and says the same", async () => {
    const headline = await textOf(page.locator("h1.headline"));
    await page.getByRole("button", { name: "Hand over" }).click();
    const downloading = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save the answer sheet" }).click();
    const download = await downloading;
    expect(download.suggestedFilename()).toMatch(/^[\p{L}\p{N}-]+\.html$/u);
    const html = readFileSync(await download.path(), "utf8");
    await page.getByRole("button", { name: "Print the sheet" }).click();
    await page.waitForFunction(() => (globalThis as unknown as { printed?: string }).printed !== undefined);
    expect(await page.evaluate(() => (globalThis as unknown as { printed: string }).printed)).toContain(headline);
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press("Escape");

    const reading = await built.browser.newContext({ javaScriptEnabled: false });
    watch(reading);
    const sheet = await reading.newPage();
    await sheet.setContent(html);
    expect(await textOf(sheet.locator("h1"))).toBe(headline);
    expect(await sheet.locator("svg").count()).toBeGreaterThan(0);
    await reading.close();
  });

  it("says what is wrong beside the line, keeps the picture in grey, mends and takes back", async () => {
    const area = page.getByRole("textbox", { name: "Text of the station's file" });
    const before = await area.inputValue();
    const lineNumber = before.slice(0, before.indexOf("length:")).split("\n").length;
    await area.fill(before.replace("length:", "lenght:"));
    const problem = page.locator(`.problems li[data-of="${lineNumber}"]`).first();
    await problem.waitFor();
    expect(await textOf(problem)).toContain("lenght");
    const lineBox = (await page.locator(`.file-line[data-line="${lineNumber}"]`).boundingBox())!;
    const problemBox = (await problem.boundingBox())!;
    expect(Math.abs(problemBox.y - lineBox.y)).toBeLessThan(4);
    expect(problemBox.x).toBeGreaterThan(lineBox.x);
    expect(await page.locator(".stage.grey").count()).toBe(1);
    expect(await violations(page)).toEqual([]);

    await problem.getByRole("button", { name: "Change to length" }).click();
    await page.locator(".problems").waitFor({ state: "detached" });
    expect(await area.inputValue()).toBe(before);

    await area.fill("feedpath: 1\nstation: 3 x\n");
    await page.locator(".problems li").first().waitFor();
    await area.focus();
    await page.keyboard.press("Control+z");
    await page.locator(".problems").waitFor({ state: "detached" });
    expect(await area.inputValue()).toBe(before);
  });

  it("changes a value where it stands, and remembers the text over a reload", async () => {
    await page
      .locator(".parts")
      .getByRole("button", { name: /height: .*Change it/ })
      .click();
    await page.locator(".value-field").fill("9 m");
    await page.keyboard.press("Enter");
    await page.locator(".value-field").waitFor({ state: "detached" });
    await page.locator(".file-lines").getByText("height: 9 m").waitFor();
    await page.waitForTimeout(600);
    await page.reload();
    await settled(page);
    expect(await page.getByRole("textbox", { name: "Text of the station's file" }).inputValue()).toContain(
      "height: 9 m",
    );
    await page.getByRole("button", { name: "Undo" }).click();
    await page.locator(".file-lines").getByText("height: 9 m").waitFor({ state: "detached" });
  });

  it.each([
    ["light", 1440],
    ["dark", 1440],
    ["light", 768],
    ["light", 390],
    ["dark", 390],
  ] as const)("has no barrier in %s at %i px, and nothing wider than the page", async (colorScheme, width) => {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width, height: 844 });
    await page.locator(".stage svg").waitFor();
    expect(await violations(page)).toEqual([]);
    expect(
      await page.evaluate(() => document.querySelector("main")!.scrollWidth - window.innerWidth),
    ).toBeLessThanOrEqual(0);
    if (width < 600) {
      for (const place of ["Station", "Hand over", "Answer"]) {
        await page
          .getByRole("navigation", { name: "Places of this page" })
          .getByRole("button", { name: place })
          .click();
        expect(await violations(page)).toEqual([]);
      }
    }
  });

  it("moves a value with the arrow keys, step by step", async () => {
    await page.setViewportSize({ width: 1440, height: 900 });
    const height = page.locator(".parts").getByRole("button", { name: /height: .*Change it/ });
    const before = Number.parseFloat(await textOf(height));
    await height.focus();
    for (const tenths of [1, 2, 3]) {
      await page.keyboard.press("ArrowUp");
      await page.waitForFunction(
        (wanted) => document.activeElement?.textContent === wanted,
        `${Number((before + tenths / 10).toFixed(1))} m`,
      );
      await settled(page);
    }
    // One step back where the presses came quickly, as many as there were where they did not.
    for (let step = 0; step < 3 && Number.parseFloat(await textOf(height)) !== before; step += 1) {
      await page.getByRole("button", { name: "Undo" }).click();
      await settled(page);
    }
    expect(Number.parseFloat(await textOf(height))).toBe(before);
  });

  it("asks with what is typed, and says what is wrong with it", async () => {
    const band = questions.find(({ id }) => id === "band")!;
    await page.locator(".rail").getByRole("button", { name: band.asked, exact: true }).click();
    const [limit] = band.parameters;
    const field = page.getByLabel(limit!.title, { exact: true });
    await field.fill("3");
    await field.press("Enter");
    await page.locator(".verdict", { hasText: "below 3" }).waitFor();
    await field.fill("three");
    await field.press("Enter");
    await page.locator(".parameters .value-problem", { hasText: "three" }).waitFor();
    expect(await violations(page)).toEqual([]);
    await field.fill("");
    await field.press("Enter");
    await page.locator(".verdict", { hasText: "below 2" }).waitFor();
  });

  it("follows a slider, by keys too, and types what it stands for", async () => {
    const { asked, group, parameters } = questions.find(({ id }) => id === "why")!;
    const button = page.locator(".rail").getByRole("button", { name: asked, exact: true });
    if ((await button.count()) === 0) await page.locator(".rail h2 button", { hasText: group }).click();
    await button.click();
    await page.locator(".asked", { hasText: asked }).waitFor();
    await settled(page);
    const { title } = parameters.find(({ name }) => name === "permittivity")!;
    const slider = page.getByRole("slider", { name: title });
    const headline = await textOf(page.locator("h1.headline"));
    await slider.focus();
    for (let press = 0; press < 12; press++) await slider.press("ArrowLeft");
    await page.waitForFunction((before) => document.querySelector("h1")?.textContent !== before, headline);
    expect(await page.getByRole("textbox", { name: title }).inputValue()).toMatch(/^\d(\.\d+)?$/);
    expect(await slider.evaluate((element) => element === document.activeElement)).toBe(true);
    expect(await violations(page)).toEqual([]);
  });

  // On a single core there are no further workers.
  it.skipIf(availableParallelism() < 2)("solves with further workers, and answers the same when they end", async () => {
    const opened = await built.browser.newContext({ viewport: { width: 1440, height: 900 } });
    watch(opened);
    const { asked, group } = questions.find(({ id }) => id === "height")!;
    const isSolver = (worker: Worker): boolean => /\/solver-/.test(worker.url());
    // The answer may have gone on without the worker before it is ended.
    const end = (worker: Worker) => worker.evaluate(() => self.close()).catch(() => undefined);
    const answerOf = async (ending: boolean): Promise<{ words: string; started: number }> => {
      const other = await opened.newPage();
      await other.goto(built.address);
      await settled(other);
      if (ending) {
        const first = other.workers().find(isSolver) ?? (await other.waitForEvent("worker", isSolver));
        const ended = first.waitForEvent("close");
        await end(first);
        await ended;
      }
      let started = 0;
      other.on("worker", (worker) => {
        if (!isSolver(worker)) return;
        started += 1;
        // The second is ended at work.
        if (ending && started === 1) void end(worker);
      });
      await other.getByRole("textbox", { name: "Text of the station's file" }).fill(doublet);
      await other.locator("header", { hasText: "Orchard doublet" }).waitFor();
      const button = other.locator(".rail").getByRole("button", { name: asked, exact: true });
      if ((await button.count()) === 0) await other.locator(".rail h2 button", { hasText: group }).click();
      await button.click();
      await other.waitForFunction(
        (words) =>
          document.querySelector(".answer:not(.older)[aria-busy=false] .steps math") &&
          document.querySelector(".asked")?.textContent === words,
        asked,
      );
      const words = await textOf(other.locator(".answer"));
      await other.close();
      return { words, started };
    };
    const disturbed = await answerOf(true);
    const undisturbed = await answerOf(false);
    expect(disturbed.started).toBeGreaterThan(0);
    expect(disturbed.words).toBe(undisturbed.words);
    await opened.close();
  });

  it("tells a person whose browser keeps nothing, and works all the same", async () => {
    const refusing = await built.browser.newContext({ serviceWorkers: "block" });
    await refusing.addInitScript(() => {
      Object.defineProperty(window, "indexedDB", {
        get: () => {
          throw new Error("storage is switched off");
        },
      });
    });
    const other = await refusing.newPage();
    await other.goto(built.address);
    await settled(other);
    await other.getByText("does not let the page keep your text").waitFor();
    await refusing.close();
  });

  it("says that it has a defect when nothing can be computed, and gives the file's text away", async () => {
    const broken = await built.browser.newContext({ serviceWorkers: "block" });
    await broken.route("**/host-*.js", (route) => route.abort());
    const other = await broken.newPage();
    await other.goto(built.address);
    await other.getByText("The program has a defect").waitFor();
    const downloading = other.waitForEvent("download");
    await other.getByRole("alert").getByRole("button", { name: "Save the file" }).click();
    const saved = readFileSync(await (await downloading).path(), "utf8");
    expect(saved).toContain("feedpath: 1");
    await broken.close();
  });

  it("lists feed lines, draws those chosen, and tells where their values come from", async () => {
    await page.setViewportSize({ width: 1440, height: 900 });
    await page.getByRole("button", { name: "Feed lines", exact: true }).click();
    const lines = page.getByRole("dialog", { name: "Feed lines" });
    const draw = lines.getByRole("checkbox", { name: "Draw RG-58C/U" });
    await draw.waitFor();
    expect(await lines.getByRole("checkbox").count()).toBeGreaterThan(35);
    await draw.check();
    await lines.locator(".loss-picture h3", { hasText: "RG-58C/U" }).waitFor();
    await lines.getByRole("button", { name: "RG-58C/U", exact: true }).click();
    await lines.getByText("MIL-DTL-17 sheet M17/28").first().waitFor();
    await lines.getByRole("textbox", { name: "frequency" }).fill("7 metres");
    await lines.locator(".value-problem").waitFor();
    await lines.getByRole("textbox", { name: "frequency" }).fill("145 MHz");
    await lines.locator(".loss-picture h3", { hasText: "145" }).waitFor();
    await lines.getByRole("textbox", { name: "find" }).fill("corrugated air");
    await lines.getByText(/^3 of \d+ lines$/).waitFor();
    expect(await violations(page)).toEqual([]);
    const downloading = page.waitForEvent("download");
    await lines.getByRole("button", { name: /^Save .* as a page$/ }).click();
    const saved = readFileSync(await (await downloading).path(), "utf8");
    expect(saved).toContain("RG-58C/U");
    await page.keyboard.press("Escape");
    await lines.waitFor({ state: "detached" });
  });

  it("writes out in its head what would turn the reading direction of a station's name", async () => {
    const other = await (await built.browser.newContext({ viewport: { width: 1440, height: 900 } })).newPage();
    await other.goto(built.address);
    await settled(other);
    const area = other.getByRole("textbox", { name: "Text of the station's file" });
    await area.fill((await area.inputValue()).replace(/^station: .*$/m, 'station: "club \\u202Elive"'));
    await other.locator("header", { hasText: "club ‹U+202E›live" }).waitFor();
    expect(await other.title()).toBe("club ‹U+202E›live · Feedpath");
    await other.context().close();
  });

  it("opens by a link that was cut in the middle of a character", async () => {
    const other = await context.newPage();
    await other.goto(`${built.address}#%E0%A4%A`);
    await settled(other);
    expect(await textOf(other.locator("h1.headline"))).toMatch(/\d/);
    await other.close();
  });

  it("tells a part that could not be loaded as that, and goes on once it can be", async () => {
    const cut = await built.browser.newContext({ serviceWorkers: "block" });
    await cut.route("**/handOver-*.js", (route) => route.abort());
    const other = await cut.newPage();
    await other.goto(built.address);
    const note = other.getByRole("alert").filter({ hasText: "A part of the page could not be loaded" });
    await note.waitFor();
    expect(await textOf(other.locator("h1.headline"))).toMatch(/\d.*W/);
    expect(await other.getByText("The program has a defect").count()).toBe(0);
    expect(await violations(other)).toEqual([]);
    await cut.unroute("**/handOver-*.js");
    await note.getByRole("button", { name: "Try again" }).click();
    await other.locator(".steps math").first().waitFor();
    expect(await note.count()).toBe(0);
    await cut.close();
  });

  it("plays, stops and steps a film by hand, and never by itself", async () => {
    const other = await context.newPage();
    await other.goto(`${built.address}#bounce`);
    const film = other.locator(".film");
    const slider = film.getByRole("slider");
    const moment = async (): Promise<number> => Number(await slider.inputValue());
    await film.locator("svg").waitFor();
    await other.waitForTimeout(400);
    const last = Number(await slider.getAttribute("max"));
    expect(await moment()).toBe(last);
    await film.getByRole("button", { name: "Play" }).click();
    await other.waitForFunction((end) => {
      const at = Number(document.querySelector<HTMLInputElement>(".film input")?.value);
      return at > 2 && at < end;
    }, last);
    await film.getByRole("button", { name: "Pause" }).click();
    const stopped = await moment();
    await other.waitForTimeout(300);
    expect(await moment()).toBe(stopped);
    await film.getByRole("button", { name: "One step back" }).click();
    expect(await moment()).toBe(stopped - 1);
    await slider.press("ArrowRight");
    expect(await moment()).toBe(stopped);
    expect(await slider.getAttribute("aria-valuetext")).toMatch(/^after .* ways along the line$/);
    await slider.press("End");
    expect(await film.getByRole("button", { name: "One step on" }).isDisabled()).toBe(true);
    const downloading = other.waitForEvent("download");
    await film.getByRole("button", { name: "save the film" }).click();
    expect(readFileSync(await (await downloading).path(), "utf8")).toContain("<animate ");
    expect(await violations(other)).toEqual([]);
    await other.close();
  }, 60_000);

  it("works with the server stopped after the first load", async () => {
    await page.setViewportSize({ width: 1440, height: 900 });
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await built.stopServer();
    await page.reload();
    await settled(page);
    expect(await textOf(page.locator("h1.headline"))).toMatch(/\d/);
    const [, second] = questions;
    await page.locator(".rail").getByRole("button", { name: second!.asked, exact: true }).click();
    await page.waitForFunction(() => document.querySelector(".answer:not(.older)[aria-busy=false] .steps math"));
  });

  it("asked nothing of anybody else, and the browser had nothing to complain of", () => {
    expect(foreign).toEqual([]);
    expect(complaints).toEqual([]);
  });
});
