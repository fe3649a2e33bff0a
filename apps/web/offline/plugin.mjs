// Writes the service worker once the bundle is known, with the list of files it keeps and a version made from them.
import { createHash } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative, resolve } from "node:path";

const template = new URL("./serviceWorker.js", import.meta.url);

/** Vite plug-in: after the build, every file of it is named in `offline.js`, so that the page opens without a server. */
export function offline() {
  let folder = "";
  return {
    name: "offline",
    apply: "build",
    configResolved(config) {
      folder = resolve(config.root, config.build.outDir);
    },
    writeBundle() {
      const files = readdirSync(folder, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile() && entry.name !== "offline.js")
        .map((entry) => relative(folder, join(entry.parentPath, entry.name)).replaceAll("\\", "/"))
        .sort();
      const hash = createHash("sha256");
      for (const file of files) hash.update(file).update(readFileSync(join(folder, file)));
      const list = JSON.stringify(["./", ...files.filter((file) => file !== "index.html")]);
      const text = readFileSync(template, "utf8")
        .replace('"THE VERSION"', JSON.stringify(hash.digest("hex").slice(0, 16)))
        .replace('["THE FILES"]', list);
      writeFileSync(join(folder, "offline.js"), text);
    },
  };
}
