/** Every antenna to begin with, in the order in which they are offered. */
import { arrayStarters } from "./arrays";
import { dipoleStarters } from "./dipoles";
import { endFedStarters } from "./endFed";
import { largeStarters } from "./large";
import { loadedDipoleStarters } from "./loadedDipoles";
import { logPeriodicStarters } from "./logPeriodic";
import { loopStarters } from "./loops";
import type { Starter } from "./starter";
import { verticalStarters } from "./verticals";

export const starters: readonly Starter[] = [
  ...dipoleStarters,
  ...loadedDipoleStarters,
  ...endFedStarters,
  ...verticalStarters,
  ...loopStarters,
  ...arrayStarters,
  ...logPeriodicStarters,
  ...largeStarters,
];

export const findStarter = (name: string): Starter | undefined => starters.find((starter) => starter.name === name);
