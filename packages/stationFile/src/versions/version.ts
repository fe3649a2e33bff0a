/** Versions of the grammar. A file of an older version is brought up step by step by the migrations below. */

import type { Tree } from "../reading/yamlTree";
import type { Fault } from "../units/fault";
import { shown } from "../units/nearest";

/** The version of the grammar that this program writes and reads. */
export const grammarVersion = 1;

interface Migration {
  /** Version of the file it takes; it gives the next. */
  readonly from: number;
  readonly migrate: (tree: { readonly [key: string]: Tree }) => { readonly [key: string]: Tree };
}

/** One entry per step, each in a file of its own beside this one, with its test. Version 1 is the first: none yet. */
const migrations: readonly Migration[] = [];

export type Versioned = { readonly tree: Tree; readonly assumed: boolean } | { readonly fault: Fault };

/** The tree in the present version of the grammar, or why it cannot be read. A file without `feedpath` is version 1. */
export function presentVersion(tree: Tree): Versioned {
  if (tree === null || typeof tree !== "object" || !("feedpath" in tree)) return { tree, assumed: true };
  const text = tree.feedpath;
  const version = typeof text === "string" && /^\d{1,6}$/.test(text) ? Number(text) : Number.NaN;
  if (!(version >= 1)) {
    const message = `"${shown(String(text))}" is no version of the grammar. Expected: feedpath: ${grammarVersion}.`;
    return {
      fault: {
        message,
        expected: `feedpath: ${grammarVersion}`,
        nearest: String(grammarVersion),
        mend: String(grammarVersion),
      },
    };
  }
  if (version > grammarVersion) {
    const message = `This file is written in version ${version} of the grammar; this program reads up to version ${grammarVersion}. Open it with a Feedpath that reads version ${version}.`;
    return { fault: { message, expected: `feedpath: ${grammarVersion}`, nearest: null, mend: null } };
  }
  const steps = migrations.filter((step) => step.from >= version).sort((a, b) => a.from - b.from);
  return {
    tree: steps.reduce((older, step) => step.migrate(older), tree as { readonly [key: string]: Tree }),
    assumed: false,
  };
}
