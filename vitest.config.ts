import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    testTimeout: 60_000,
    onConsoleLog(log) {
      throw new Error(`a test printed to the console: ${log}`);
    },
    projects: [
      {
        extends: true,
        test: {
          name: "all",
          provide: { kernels: "reference" },
          include: [
            "packages/*/src/**/*.test.ts",
            "apps/*/src/**/*.test.{ts,tsx}",
            "checks/src/**/*.check.ts",
            "tools/**/*.test.ts",
            "examples/**/*.test.ts",
            "bench/src/**/*.test.ts",
          ],
        },
      },
      {
        // The engine once more, on the fast twin of its kernels.
        extends: true,
        test: {
          name: "fast",
          provide: { kernels: "fast" },
          include: ["packages/engine/src/**/*.test.ts"],
          setupFiles: ["packages/fastKernels/testing/chooseFast.ts"],
        },
      },
    ],
  },
});
