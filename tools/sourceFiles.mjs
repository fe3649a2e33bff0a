// Lists the files of the project for the tools that read them all.
import { readdirSync } from "node:fs";
import { join, sep } from "node:path";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("..", import.meta.url));

const notOurs = new Set(["node_modules", ".git", ".tsbuild", "dist", "out", "coverage"]);

/**
 * Paths of all files of the project below `folder`, from the root, with forward slashes, sorted.
 * @returns {string[]}
 */
export function sourceFiles(folder = "") {
  const entries = readdirSync(join(root, folder), { withFileTypes: true }).filter(({ name }) => !notOurs.has(name));
  const files = entries.flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return sourceFiles(path);
    return entry.isFile() ? [path.split(sep).join("/")] : [];
  });
  return files.sort();
}

/** A file is a test when its name says so. @param {string} file */
export const isTest = (file) => /\.(test|check)\.tsx?$/.test(file);
