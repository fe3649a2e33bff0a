// Builds the page and serves it on this machine. The address is always printed; a browser is opened where there is one.
import { spawnSync } from "node:child_process";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { preview } from "vite";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const vite = join(dirname(createRequire(import.meta.url).resolve("vite/package.json")), "bin/vite.js");

const built = spawnSync(process.execPath, [vite, "build", "--logLevel", "warn"], {
  cwd: root,
  stdio: "inherit",
  env: { ...process.env, NODE_ENV: "production" },
});
if (built.status !== 0) {
  process.stderr.write("The page could not be built; the lines above say why. Nothing is served.\n");
  process.exit(1);
}

const asked = Number(process.env.PORT);
const screen = process.platform !== "linux" || Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);
const server = await preview({
  root,
  logLevel: "warn",
  preview: { host: "localhost", port: Number.isInteger(asked) && asked > 0 ? asked : 4173, strictPort: false },
});
const address = server.resolvedUrls?.local[0] ?? "";
process.stdout.write(
  `Feedpath is open at ${address}\nStop it with Ctrl+C. After the first load the page also works without it.\n`,
);
if (screen && !process.env.CI && process.env.BROWSER !== "none") server.openBrowser?.();
