/** How `sky` is listed: what it is asked as, and with what. */
import type { QuestionListing } from "../common/question";

export const skyListing: QuestionListing = {
  id: "sky",
  asked: "Where does my signal go?",
  group: "Nobody hears me",
  about:
    "Pattern upwards and around, watts by angle, lobes and nulls, a dipole to compare with, and where a first hop ends.",
  parameters: [
    {
      name: "elevation",
      title: "wanted elevation",
      dimension: "angle",
      words: [],
      least: 0.0174,
      most: 1.5708,
      otherwise: "the file's `wanted`; else where the antenna is strongest, or 20° when that is steep",
    },
    {
      name: "direction",
      title: "wanted direction, from north by east",
      dimension: "angle",
      words: [],
      least: 0,
      most: 6.2832,
      otherwise: "the file's `wanted`; else where the antenna is strongest",
    },
    {
      name: "layerE",
      title: "height of the E layer",
      dimension: "length",
      words: [],
      least: 80e3,
      most: 160e3,
      otherwise: "110 km",
    },
    {
      name: "layerF",
      title: "height of the F layer",
      dimension: "length",
      words: [],
      least: 150e3,
      most: 600e3,
      otherwise: "300 km",
    },
  ],
};
