import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "./sourceFiles.mjs";

interface LockedPackage {
  readonly version?: string;
  readonly resolved?: string;
  readonly integrity?: string;
  readonly link?: boolean;
}

const text = readFileSync(join(root, "package-lock.json"), "utf8");
const packages: Readonly<Record<string, LockedPackage>> = JSON.parse(text).packages;
const installed = Object.entries(packages).filter(([path, { link }]) => path.includes("node_modules/") && !link);

describe("package-lock.json", () => {
  it("holds no host of any registry, so that it installs from whichever one a machine uses", () => {
    const hosts = Object.values(packages).flatMap(({ resolved = "" }) =>
      /^[a-z+]+:\/\//.test(resolved) ? [resolved] : [],
    );
    expect(hosts).toEqual([]);
  });

  it("pins every package by its content", () => {
    expect(installed.length).toBeGreaterThan(50);
    // A package bundled inside another is covered by the outer one's hash.
    const unpinned = installed.filter(([, entry]) => !entry.integrity && !("inBundle" in entry)).map(([path]) => path);
    expect(unpinned).toEqual([]);
  });
});
