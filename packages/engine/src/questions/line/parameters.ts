/** What `line` can be asked with. */
import type { ParameterDefinition } from "../common/question";
import { mattersWords } from "./ranking";

const text = { words: [], least: 0, most: 0 } as const;

export const parameterDefinitions: readonly ParameterDefinition[] = [
  {
    name: "line",
    title: "line of the path that would be replaced",
    dimension: "name",
    ...text,
    otherwise: "the longest line in use",
  },
  {
    name: "candidates",
    title: "lines to look at, with commas between",
    dimension: "name",
    ...text,
    otherwise: "those of the file and of the catalogue",
  },
  {
    name: "matters",
    title: "what the lines are ranked by",
    dimension: "word",
    words: mattersWords,
    least: 0,
    most: 0,
    otherwise: "watts into the antenna",
  },
];
