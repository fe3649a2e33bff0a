/** How `outside` is listed: what it is asked as, and with what. */
import type { QuestionListing } from "../common/question";

export const outsideListing: QuestionListing = {
  id: "outside",
  asked: "Does the outside of the line carry current?",
  group: "It gets hot, or bites in the shack",
  about: "Current along the outside of the line, what it changes, volts in the shack, and what choke belongs where.",
  parameters: [
    {
      name: "choke",
      title: "choke tried at every place, resistive",
      dimension: "impedance",
      words: [],
      least: 1,
      most: 1e6,
      otherwise: "the file's choke, else 3 kohm",
    },
    {
      name: "elevation",
      title: "elevation looked at",
      dimension: "angle",
      words: [],
      least: 0.0174,
      most: 1.5708,
      otherwise: "the file's `wanted`, else where it is strongest",
    },
  ],
};
