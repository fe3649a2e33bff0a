// For the browser test: builds the page into a folder of its own, serves it, and opens a browser on it.
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { preview } from "vite";
import { findBrowser } from "../../../tools/setup/browser.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
const vite = join(dirname(createRequire(import.meta.url).resolve("vite/package.json")), "bin/vite.js");

/** Without these a browser in a closed network tries again and again to reach its maker. */
const quiet = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

function build(folder) {
  const built = spawnSync(
    process.execPath,
    [vite, "build", "--outDir", folder, "--emptyOutDir", "--logLevel", "warn"],
    {
      cwd: root,
      encoding: "utf8",
      // Vitest's own NODE_ENV would put the development build of the libraries into the page.
      env: { ...process.env, NODE_ENV: "production" },
    },
  );
  if (built.status !== 0) throw new Error(`The page could not be built:\n${built.stdout}${built.stderr}`);
}

/** `{ address, browser, stopServer, end }` of the page as it is shipped. */
export async function openBuiltPage() {
  const executablePath = findBrowser();
  if (!executablePath) throw new Error("No Chromium or Chrome for the browser test: `npm test` says how to get one.");
  const folder = mkdtempSync(join(tmpdir(), "feedpath-page-"));
  build(folder);
  const server = await preview({
    root,
    configFile: false,
    base: "./",
    logLevel: "silent",
    build: { outDir: folder },
    preview: { host: "localhost", port: 0 },
  });
  const browser = await chromium.launch({ executablePath, args: quiet });
  const stopServer = async () => {
    if (!server.httpServer.listening) return;
    server.httpServer.closeAllConnections();
    await server.close();
  };
  const end = async () => {
    await browser.close();
    await stopServer();
    rmSync(folder, { recursive: true });
  };
  return { address: server.resolvedUrls.local[0], browser, stopServer, end };
}
