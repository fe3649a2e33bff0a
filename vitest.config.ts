import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: [
      "packages/*/src/**/*.test.ts",
      "apps/*/src/**/*.test.{ts,tsx}",
      "checks/src/**/*.check.ts",
      "tools/**/*.test.ts",
      "examples/**/*.test.ts",
    ],
    testTimeout: 60_000,
    onConsoleLog(log) {
      throw new Error(`a test printed to the console: ${log}`);
    },
  },
});
