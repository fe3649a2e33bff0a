// Run in a process of its own, with a JSON of texts as its argument: opens the page as it is shipped in headless Chromium
// and prints the milliseconds to its first answer, of every change in its worker, and from an arrow key to the picture.
import { openBuiltPage } from "../../apps/web/testing/builtPage.mjs";

/** @type {{ visits: number, presses: number, asked: { name: string, question: string, texts: string[] }[] }} */
const { visits, presses, asked } = JSON.parse(process.argv[2] ?? "{}");

/** From the start of the navigation, as the page's own clock has them. */
async function firstAnswer(page, address) {
  await page.addInitScript(() => {
    const look = () => {
      if (document.querySelector("h1.headline")) performance.mark("answer");
      else requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  });
  await page.goto(address);
  await page.waitForFunction(() => performance.getEntriesByName("answer").length > 0);
  return page.evaluate(() => ({
    paint: performance.getEntriesByName("first-contentful-paint")[0]?.startTime ?? Number.NaN,
    answer: performance.getEntriesByName("answer")[0].startTime,
  }));
}

/** First paint of a page with one word, from the same server. */
async function blankPaint(page, address) {
  const blank = new URL("blank.html", address).href;
  await page.route(blank, (route) => route.fulfill({ contentType: "text/html", body: "<p>word</p>" }));
  await page.goto(blank);
  await page.waitForFunction(() => performance.getEntriesByName("first-contentful-paint").length > 0);
  return page.evaluate(() => performance.getEntriesByName("first-contentful-paint")[0].startTime);
}

/** From asking a worker to its answer, one text after another; the first starts the worker. Runs in the page. */
async function askedInWorker({ script, question, texts }) {
  const begun = performance.now();
  const worker = new Worker(script, { type: "module" });
  const heard = (run) =>
    new Promise((resolve, reject) => {
      worker.onerror = (event) => reject(new Error(event.message));
      worker.onmessage = ({ data }) => {
        if (data.run !== run || ["read", "progress"].includes(data.kind)) return;
        if (data.kind === "answered") resolve(null);
        else reject(new Error(`the worker says ${data.kind}: ${data.message ?? ""}`));
      };
    });
  const times = [];
  for (const [i, text] of texts.entries()) {
    const start = i === 0 ? begun : performance.now();
    const answered = heard(i + 1);
    worker.postMessage({ kind: "ask", run: i + 1, text, fileName: "x.yaml", measured: {}, question, parameters: {} });
    await answered;
    times.push(performance.now() - start);
    // What the worker does after its answer is no part of the next one.
    await new Promise((later) => setTimeout(later, 60));
  }
  worker.terminate();
  return times;
}

async function keyToPicture(page) {
  await page
    .locator(".parts")
    .getByRole("button", { name: /height: .*Change it/ })
    .focus();
  await page.evaluate(() => {
    window.pictures = [];
    const mark = () => window.pictures.push(performance.now());
    new MutationObserver(mark).observe(document.querySelector(".stage"), { childList: true, subtree: true });
    window.addEventListener("keydown", () => performance.mark("key"), true);
  });
  const times = [];
  for (let i = 0; i < presses; i++) {
    const before = await page.evaluate(() => window.pictures.length);
    await page.keyboard.press("ArrowUp");
    await page.waitForFunction((count) => window.pictures.length > count, before);
    times.push(
      await page.evaluate(() => window.pictures.at(-1) - performance.getEntriesByName("key").at(-1).startTime),
    );
    await page.waitForTimeout(250);
  }
  return times;
}

const built = await openBuiltPage();
try {
  const context = () => built.browser.newContext({ viewport: { width: 1440, height: 900 }, serviceWorkers: "block" });
  const seen = [];
  let script = "";
  for (let i = 0; i < visits; i++) {
    const visit = await context();
    const page = await visit.newPage();
    page.on("request", (request) => {
      if (/\/host-[^/]*\.js$/.test(request.url())) script = request.url();
    });
    const blank = await blankPaint(await visit.newPage(), built.address);
    seen.push({ ...(await firstAnswer(page, built.address)), blank });
    await visit.close();
  }
  const page = await (await context()).newPage();
  await firstAnswer(page, built.address);
  await page.waitForTimeout(1000);
  const times = [];
  for (const { question, texts } of asked) times.push(await page.evaluate(askedInWorker, { script, question, texts }));
  const keys = await keyToPicture(page);
  process.stdout.write(JSON.stringify({ seen, times, keys, browser: built.browser.version() }));
} finally {
  await built.end();
}
