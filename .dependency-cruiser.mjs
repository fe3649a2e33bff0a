// Import rules. Each carries what its breach means and where the code belongs instead.
import { engineLayers, packageLayers } from "./tools/layers.mjs";

const tests = "\\.(test|check)\\.tsx?$";
const engine = "^packages/engine/src/";

/** Folders that only tests read: they may import what tests may. */
const testing = "/testing/";

const engineRules = Object.entries(engineLayers).map(([folder, allowed]) => ({
  name: `engine-${folder}-layer`,
  comment: `engine/${folder} may import ${allowed.length ? allowed.join(", ") : "nothing"}: move what it needs down, or itself up (tools/layers.mjs).`,
  severity: "error",
  from: { path: `${engine}${folder}/`, pathNot: tests },
  to: { path: engine, pathNot: `${engine}(${[folder, ...allowed].join("|")})/` },
}));

const packageRules = Object.entries(packageLayers).map(([name, allowed]) => ({
  name: `${name.replaceAll("/", "-")}-imports`,
  comment: `${name} may import ${allowed.length ? allowed.join(", ") : "no other package"}: results flow engine, figures, report, hosts, never back.`,
  severity: "error",
  from: { path: `^${name}/`, pathNot: tests },
  to: { path: "^(packages|apps|checks|bench)/", pathNot: `^(${[name, ...allowed].join("|")})/` },
}));

export default {
  forbidden: [
    ...engineRules,
    ...packageRules,
    {
      name: "one-door-per-package",
      comment: "A package is reached through its src/index.ts only: export the name there.",
      severity: "error",
      from: { path: "^(packages|apps|checks|bench)/([^/]+)/" },
      to: { path: "^packages/([^/]+)/src/(?!index\\.ts$)", pathNot: "^$1/$2/" },
    },
    {
      name: "questions-stay-apart",
      comment: "One question does not import another: share through questions/common or chain/.",
      severity: "error",
      from: { path: `${engine}questions/([^/]+)/`, pathNot: tests },
      to: { path: `${engine}questions/([^/]+)/`, pathNot: `${engine}questions/($1|common)/` },
    },
    {
      name: "ui-never-computes",
      comment: "The page computes in its worker: ui and state take engine types only.",
      severity: "error",
      from: { path: "^apps/web/src/(ui|state)/", pathNot: tests },
      to: { path: "^packages/(engine|report)/", dependencyTypesNot: ["type-only"] },
    },
    {
      name: "files-only-in-hosts",
      comment: "Only the command line, tools, checks, bench and tests touch the platform.",
      severity: "error",
      from: { path: "^packages/", pathNot: tests },
      to: { dependencyTypes: ["core"] },
    },
    {
      name: "no-cycles",
      comment: "A cycle has no first file to read: move the shared part down.",
      severity: "error",
      from: {},
      to: { circular: true },
    },
    {
      name: "no-production-import-of-a-test",
      comment: "Tests are not a library: move what is shared into the code.",
      severity: "error",
      from: { pathNot: `${tests}|${testing}` },
      to: { path: `${tests}|${testing}` },
    },
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.base.json" },
    doNotFollow: { path: "node_modules" },
    exclude: { path: "(^|/)(\\.tsbuild|dist)/" },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "types"],
      extensions: [".ts", ".tsx", ".mjs", ".js"],
    },
  },
};
