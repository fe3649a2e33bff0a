// Builds packages/fastKernels from its AssemblyScript, when the sources or the compiler are others than those of the last build.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const home = fileURLToPath(new URL("../../packages/fastKernels", import.meta.url));
const sources = join(home, "assembly");
const built = join(home, "src", "module.generated.ts");

const options = ["--runtime", "stub", "--enable", "simd", "-O3", "--noAssert", "--importMemory"];
/** Says that hosts could not call functions that take vectors; none is exported. */
const knownWarnings = ["--disableWarning", "112"];

const compilerFolder = () => dirname(createRequire(import.meta.url).resolve("assemblyscript/package.json"));

/** SHA-256 of what the module is made from: its sources, the compiler's version and options. */
export function kernelsHash() {
  const { version } = JSON.parse(readFileSync(join(compilerFolder(), "package.json"), "utf8"));
  const hash = createHash("sha256").update([version, ...options].join("\n"));
  const files = readdirSync(sources).filter((name) => name.endsWith(".ts"));
  for (const name of files.sort()) hash.update(`\n${name}\n`).update(readFileSync(join(sources, name)));
  return hash.digest("hex");
}

/** Bytes of the module, or the compiler's complaint. */
function compile() {
  const folder = mkdtempSync(join(tmpdir(), "feedpath-kernels-"));
  const file = join(folder, "module.wasm");
  const compiler = join(compilerFolder(), "bin", "asc.js");
  const args = [compiler, join(sources, "index.ts"), ...options, ...knownWarnings, "-o", file];
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { encoding: "utf8" });
  const bytes = status === 0 ? readFileSync(file) : null;
  rmSync(folder, { recursive: true });
  return { bytes, complaint: `${stdout}${stderr}` };
}

/** Returns `{ trouble }`: null when the module stands ready. */
export function buildKernels() {
  const hash = kernelsHash();
  const line = `export const sourceHash = "${hash}";\n`;
  if (existsSync(built) && readFileSync(built, "utf8").includes(line)) return { trouble: null };
  const { bytes, complaint } = compile();
  if (bytes === null) return { trouble: `packages/fastKernels could not be compiled:\n${complaint}` };
  const text =
    "// Made by tools/setup/kernels.mjs from packages/fastKernels/assembly: change that, not this.\n" +
    `${line}export const moduleBase64 =\n  "${bytes.toString("base64")}";\n`;
  // Two set-ups at once must not leave half a file.
  writeFileSync(`${built}.${process.pid}`, text);
  renameSync(`${built}.${process.pid}`, built);
  return { trouble: null };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { trouble } = buildKernels();
  if (trouble) process.stderr.write(`${trouble}\n`);
  process.exit(trouble ? 1 : 0);
}
