/** Checks that need the whole station: names, references, connections, geometry. */
import type { Checked } from "./checked";
import { checkConnections, checkSets } from "./connections";
import { checkFeeds, checkRoutes, checkShapes } from "./geometry";
import { checkJoined } from "./joined";
import { checkLineTemperatures } from "./lineTemperatures";
import { checkLoads } from "./loads";
import { checkNames } from "./names";
import { checkNumberNames } from "./numberNames";
import { checkEarths, checkMayChange, checkReadings } from "./references";
import { checkReturns } from "./returns";

export function checkStation(checked: Checked): void {
  checkNames(checked);
  checkNumberNames(checked);
  checkEarths(checked);
  checkConnections(checked);
  checkSets(checked);
  checkReturns(checked);
  checkRoutes(checked);
  checkLineTemperatures(checked);
  checkShapes(checked);
  checkLoads(checked);
  checkFeeds(checked);
  checkJoined(checked);
  checkReadings(checked);
  checkMayChange(checked);
}
