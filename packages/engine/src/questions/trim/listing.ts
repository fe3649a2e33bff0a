/** How `trim` is listed: what it is asked as, and with what. */
import type { QuestionListing } from "../common/question";

export const trimListing: QuestionListing = {
  id: "trim",
  asked: "How long should it be, and how much do I cut?",
  group: "What shall I put up, buy or cut",
  about:
    "Length for the lowest SWR and for resonance, kHz per centimetre, and what to cut from each end for what was measured.",
  parameters: [
    {
      name: "measuredLowest",
      title: "measured frequency of lowest SWR",
      dimension: "frequency",
      words: [],
      least: 1e5,
      most: 3e9,
      otherwise: "the file's `readings`, else nothing measured",
    },
    {
      name: "element",
      title: "which element of several on one feed point, counted from 1",
      dimension: "none",
      words: [],
      least: 1,
      most: 50,
      otherwise: "the one nearest to resonance",
    },
    {
      name: "swrBelow",
      title: "SWR limit",
      dimension: "none",
      words: [],
      least: 1.05,
      most: 20,
      otherwise: "the file's `wanted`, else 2",
    },
  ],
};
