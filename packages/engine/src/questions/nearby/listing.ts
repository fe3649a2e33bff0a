/** How `nearby` is listed: what it is asked as, and with what. */
import type { QuestionListing } from "../common/question";

export const nearbyListing: QuestionListing = {
  id: "nearby",
  asked: "What do the gutter, the mast, the other antenna do?",
  group: "I hear only noise",
  about:
    "The station with and without conductors and antennas near by, the distance that is enough, and how to spoil their resonance.",
  parameters: [
    {
      name: "choke",
      title: "choke tried on each conductor, resistive",
      dimension: "impedance",
      words: [],
      least: 1,
      most: 1e6,
      otherwise: "1 kohm",
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
