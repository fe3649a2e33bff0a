import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { findBrowser } from "./setup/browser.mjs";
import { isInstalled, lockStamp } from "./setup/packages.mjs";
import { root } from "./sourceFiles.mjs";

/** Runs the set-up as if this were another version of Node. */
function setupUnder(version: string) {
  const pretend = `Object.defineProperty(process, "versions", { value: { ...process.versions, node: "${version}" } });`;
  const { status, stderr } = spawnSync(
    process.execPath,
    ["--import", `data:text/javascript,${encodeURIComponent(pretend)}`, join(root, "tools/setup.mjs")],
    { encoding: "utf8" },
  );
  return { status, stderr };
}

describe("the set-up", () => {
  it.each(["18.20.8", "20.18.3", "21.7.0", "22.11.0"])(
    "tells a person with Node %s what to do, and stops",
    (version) => {
      const { status, stderr } = setupUnder(version);
      expect(status).toBe(1);
      expect(stderr).toContain(`this is Node ${version}`);
      expect(stderr).toContain("Install a current Node");
    },
  );

  it("knows a changed lock file by its content", () => {
    expect(lockStamp('{ "a": 1 }')).toBe(lockStamp('{ "a": 1 }'));
    expect(lockStamp('{ "a": 1 }')).not.toBe(lockStamp('{ "a": 2 }'));
  });

  it("sees whether npm has installed what the lock file says", () => {
    const a = { version: "1.0.0", integrity: "sha512-a" };
    const forElsewhere = { version: "1.0.0", integrity: "sha512-e", optional: true };
    const wanted = { "": {}, "node_modules/a": a, "node_modules/e": forElsewhere };
    expect(isInstalled(wanted, { "node_modules/a": a })).toBe(true);
    expect(isInstalled(wanted, {})).toBe(false);
    expect(isInstalled(wanted, { "node_modules/a": { ...a, version: "1.0.1" } })).toBe(false);
    expect(isInstalled(wanted, { "node_modules/a": a, "node_modules/b": a })).toBe(false);
  });

  it("takes the browser that FEEDPATH_BROWSER names, and none when that is not there", () => {
    const before = process.env.FEEDPATH_BROWSER;
    try {
      process.env.FEEDPATH_BROWSER = process.execPath;
      expect(findBrowser()).toBe(process.execPath);
      process.env.FEEDPATH_BROWSER = join(root, "no-such-browser");
      expect(findBrowser()).toBeNull();
    } finally {
      if (before === undefined) delete process.env.FEEDPATH_BROWSER;
      else process.env.FEEDPATH_BROWSER = before;
    }
  });
});
