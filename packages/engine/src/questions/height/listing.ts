/** How `height` is listed: what it is asked as, and with what. */
import type { QuestionListing } from "../common/question";

export const heightListing: QuestionListing = {
  id: "height",
  asked: "How high should it hang?",
  group: "What shall I put up, buy or cut",
  about: "Watts to the sky, SWR, feed point and gain at chosen angles against height, and where the pattern splits.",
  parameters: [
    {
      name: "heights",
      title: "heights of the feed point",
      dimension: "lengthSpan",
      words: [],
      least: 0.1,
      most: 300,
      otherwise: "from about 0.07 to 0.6 of a wave",
    },
    {
      name: "elevation",
      title: "wanted elevation",
      dimension: "angle",
      words: [],
      least: 0.0174,
      most: 1.5708,
      otherwise: "the file's `wanted`, else 20°",
    },
  ],
};
