// Installs exactly what package-lock.json says, and only when that is not what is installed.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../..", import.meta.url));
const stampFile = join(root, "node_modules", ".feedpath-lock");

/** What node_modules must have been installed from: the lock file's SHA-256, and the machine kind, since some packages are binaries. */
export function lockStamp(lockText) {
  return `${createHash("sha256").update(lockText).digest("hex")} ${process.platform}-${process.arch}\n`;
}

/**
 * True when npm's own record of node_modules (`installed`) is what the lock file (`wanted`) says, as after `npm install`.
 * Both are their files' `packages`. Packages for other machines are in the lock file only and marked optional.
 */
export function isInstalled(wanted, installed) {
  const same = (path) =>
    installed[path].version === wanted[path]?.version && installed[path].integrity === wanted[path]?.integrity;
  const missing = Object.keys(wanted).filter((path) => path !== "" && !(path in installed));
  return missing.every((path) => wanted[path].optional) && Object.keys(installed).every(same);
}

function npmInstalledIt(lockText) {
  const record = join(root, "node_modules", ".package-lock.json");
  return existsSync(record) && isInstalled(JSON.parse(lockText).packages, JSON.parse(readFileSync(record)).packages);
}

/** Runs the npm that started us, else the one on the PATH. Dependencies for development are always wanted: tests and page need them. */
function npmCi() {
  const npm = process.env.npm_execpath;
  const args = ["ci", "--include=dev", "--no-audit", "--no-fund", "--loglevel=error"];
  const options = { cwd: root, stdio: ["ignore", 2, 2] };
  return npm
    ? spawnSync(process.execPath, [npm, ...args], options)
    : spawnSync("npm", args, { ...options, shell: process.platform === "win32" });
}

/** Returns `{ trouble }`: null when the packages are there. */
export function installPackages() {
  const lockText = readFileSync(join(root, "package-lock.json"), "utf8");
  const wanted = lockStamp(lockText);
  if (existsSync(stampFile) && readFileSync(stampFile, "utf8") === wanted) return { trouble: null };
  if (npmInstalledIt(lockText)) {
    writeFileSync(stampFile, wanted);
    return { trouble: null };
  }
  process.stderr.write("Installing what Feedpath needs (once, and again when package-lock.json changes) ...\n");
  if (npmCi().status !== 0) {
    return {
      trouble:
        "The packages could not be installed; npm says why above.\n" +
        "Check that this computer reaches the internet (or your npm mirror), then run the same command again.",
    };
  }
  writeFileSync(stampFile, wanted);
  return { trouble: null };
}
