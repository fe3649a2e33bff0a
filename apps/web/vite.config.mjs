import { readFileSync } from "node:fs";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { offline } from "./offline/plugin.mjs";

/** Everything the page may load comes from its own origin; a station file from a stranger gets no way out. */
const policy = [
  "default-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

const ownOriginOnly = {
  name: "own-origin-only",
  apply: "build",
  transformIndexHtml: () => [
    { tag: "meta", attrs: { "http-equiv": "Content-Security-Policy", content: policy }, injectTo: "head-prepend" },
  ],
};

const { version } = JSON.parse(readFileSync(new URL("./package.json", import.meta.url), "utf8"));

export default defineConfig({
  base: "./",
  define: { __FEEDPATH_VERSION__: JSON.stringify(version) },
  plugins: [react(), ownOriginOnly, offline()],
  worker: { format: "es" },
  build: {
    target: "es2023",
    modulePreload: { polyfill: false },
    // What may be loaded before the first answer is counted by the browser test, compressed.
    chunkSizeWarningLimit: 1500,
    // How long plug-ins took is nothing to tell a person who starts the page.
    rolldownOptions: { checks: { pluginTimings: false } },
  },
});
