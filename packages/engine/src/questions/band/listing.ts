/** How `band` is listed: what it is asked as, and with what. */
import type { QuestionListing } from "../common/question";

export const bandListing: QuestionListing = {
  id: "band",
  asked: "What will the transmitter see across the band?",
  group: "My SWR is high",
  about: "SWR in the shack and at the antenna over frequency, lowest SWR against resonance, usable width.",
  parameters: [
    {
      name: "swrBelow",
      title: "SWR limit",
      dimension: "none",
      words: [],
      least: 1.05,
      most: 20,
      otherwise: "the file's `wanted`, else 2",
    },
    {
      name: "sweep",
      title: "frequencies",
      dimension: "frequencySpan",
      words: [],
      least: 1e5,
      most: 3e9,
      otherwise: "the file's `band`",
    },
  ],
};
