/** Checks that need the whole station: names, references, connections, geometry. */
import type { Station } from "@feedpath/engine";
import type { WrittenAntenna } from "../building/antennas";
import type { Build } from "../building/build";
import type { KeyPath } from "../reading/sourceText";
import type { FileStation } from "../schema/station";
import { checkConnections, checkSets } from "./connections";
import { checkFeeds, checkRoutes, checkShapes } from "./geometry";
import { checkNames } from "./names";
import { checkEarths, checkMayChange, checkReadings } from "./references";
import { checkReturns } from "./returns";

export interface Checked {
  readonly build: Build;
  readonly file: FileStation;
  readonly station: Station;
  readonly antennas: readonly WrittenAntenna[];
  /** Names of the parts and ends of the path, in order, with their place in the file. */
  readonly partNames: readonly { readonly name: string; readonly path: KeyPath }[];
  /** Names of all feeds. */
  readonly feeds: readonly string[];
}

export function checkStation(checked: Checked): void {
  checkNames(checked);
  checkEarths(checked);
  checkConnections(checked);
  checkSets(checked);
  checkReturns(checked);
  checkRoutes(checked);
  checkShapes(checked);
  checkFeeds(checked);
  checkReadings(checked);
  checkMayChange(checked);
}
