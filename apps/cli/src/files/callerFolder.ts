import { dirname, resolve } from "node:path";

/**
 * The folder that file names on the command line are relative to. `npm run` moves to the folder of its package.json and
 * leaves the caller's in INIT_CWD; anywhere else INIT_CWD may be left over from an outer npm and means nothing.
 */
export function callerFolder(env: NodeJS.ProcessEnv = process.env, current: string = process.cwd()): string {
  const movedByNpm = env.npm_package_json !== undefined && dirname(env.npm_package_json) === current;
  return movedByNpm && env.INIT_CWD ? env.INIT_CWD : current;
}

export const fromCaller = (file: string): string => resolve(callerFolder(), file);
