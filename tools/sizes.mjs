// Tells which source files have grown long. A long file is a question ("is this still one idea?"), not a failure.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { root, sourceFiles } from "./sourceFiles.mjs";

const longAbove = 200;
const long = sourceFiles()
  .filter((file) => /\.(ts|tsx|mjs)$/.test(file) && !/\.generated\./.test(file))
  .map((file) => ({ file, lines: readFileSync(join(root, file), "utf8").split("\n").length - 1 }))
  .filter(({ lines }) => lines > longAbove)
  .sort((a, b) => b.lines - a.lines);
for (const { file, lines } of long) process.stdout.write(`${String(lines).padStart(6)} lines  ${file}\n`);
process.stdout.write(`${long.length} files above ${longAbove} lines\n`);
