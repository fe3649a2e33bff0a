// Finds a Chromium or Chrome for the browser test, and installs Debian's where there is none and we may.
import { spawnSync } from "node:child_process";
import { accessSync, constants, existsSync } from "node:fs";
import { delimiter, join } from "node:path";

const variable = "FEEDPATH_BROWSER";
const commands = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome"];
const usualPlaces = {
  darwin: [
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  ],
  win32: [process.env.PROGRAMFILES, process.env["PROGRAMFILES(X86)"], process.env.LOCALAPPDATA]
    .filter(Boolean)
    .map((folder) => join(folder, "Google", "Chrome", "Application", "chrome.exe")),
};

const isProgram = (file) => {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
};

/** Some systems ship a stub that only says where the browser could be had: believe a command only when it tells its version. */
const answers = (file) => spawnSync(file, ["--version"], { stdio: "ignore", timeout: 20_000 }).status === 0;

/** Path of the browser the tests use, or null: the variable FEEDPATH_BROWSER, else the system's Chromium or Chrome. */
export function findBrowser() {
  const chosen = process.env[variable];
  if (chosen) return existsSync(chosen) ? chosen : null;
  const onPath = (process.env.PATH ?? "").split(delimiter).filter(Boolean);
  const candidates = commands.flatMap((name) => onPath.map((folder) => join(folder, name)));
  const places = usualPlaces[process.platform] ?? [];
  return candidates.find((file) => isProgram(file) && answers(file)) ?? places.find(isProgram) ?? null;
}

const mayInstall = () => process.platform === "linux" && process.getuid?.() === 0 && existsSync("/usr/bin/apt-get");

function installChromium() {
  process.stderr.write("No Chromium or Chrome found for the browser test: installing Debian's chromium ...\n");
  // Standard output belongs to the test's own report; another package manager at work is waited for.
  const options = { stdio: ["ignore", 2, 2], env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" } };
  const apt = (...args) => spawnSync("apt-get", ["-o", "DPkg::Lock::Timeout=300", "-q", ...args], options).status === 0;
  apt("update");
  return apt("install", "-y", "chromium");
}

const howToGetOne =
  "The browser test needs Chromium or Chrome, and none was found.\n" +
  "  Debian:          sudo apt-get install chromium\n" +
  "  other systems:   install Chromium or Chrome the usual way\n" +
  `  somewhere else:  set ${variable} to the path of the program, for example\n` +
  `                   ${variable}="/opt/chrome/chrome" npm test\n` +
  "Then run the same command again.";

/** Returns `{ trouble }`: null when a browser is there. */
export function browserForTests() {
  if (findBrowser()) return { trouble: null };
  const chosen = process.env[variable];
  if (chosen) return { trouble: `${variable} is "${chosen}", but there is no such file. Mend or unset it.` };
  if (mayInstall()) installChromium();
  return { trouble: findBrowser() ? null : howToGetOne };
}
