/** How `radials` is listed: what it is asked as, and with what. */
import type { QuestionListing } from "../common/question";

export const radialsListing: QuestionListing = {
  id: "radials",
  asked: "How many radials, how long, up or down?",
  group: "Nobody hears me",
  about:
    "Watts to the sky, SWR and gain against number, length and height of radials, the same wire cut otherwise, and the current in each.",
  parameters: [
    {
      name: "wire",
      title: "wire of all radials together",
      dimension: "length",
      words: [],
      least: 1,
      most: 5000,
      otherwise: "number times length in the file",
    },
    {
      name: "length",
      title: "length of each radial where their number changes",
      dimension: "length",
      words: [],
      least: 0.05,
      most: 500,
      otherwise: "as in the file, else an eighth wave",
    },
    {
      name: "height",
      title: "height of raised radials",
      dimension: "length",
      words: [],
      least: 0.05,
      most: 50,
      otherwise: "2.5 m, an eighth wave at most",
    },
    {
      name: "elevation",
      title: "elevation looked at",
      dimension: "angle",
      words: [],
      least: 0.0174,
      most: 1.5708,
      otherwise: "the file's `wanted`, else 15°",
    },
  ],
};
