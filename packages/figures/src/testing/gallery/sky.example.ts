import { azimuthPattern } from "../../patterns/azimuthPattern";
import { elevationPattern } from "../../patterns/elevationPattern";
import { skyShape } from "../../patterns/skyShape";
import { exampleSky } from "../exampleSky";
import type { FigureExample } from "./example";

const builders = { elevationPattern, azimuthPattern, skyShape };

export const examples: readonly FigureExample[] = Object.entries(builders).flatMap(([builder, draw]) => [
  { builder, name: `sky-${builder}`, draw: () => draw(exampleSky(), { width: 640 }) },
  { builder, name: `sky-${builder}-phone`, draw: () => draw(exampleSky(), { width: 320 }) },
]);
