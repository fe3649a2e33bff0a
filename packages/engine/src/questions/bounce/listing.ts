/** How `bounce` is listed: what it is asked as, and with what. */
import type { QuestionListing } from "../common/question";
import { bounceParameters } from "./parameters";

export const bounceListing: QuestionListing = {
  id: "bounce",
  asked: "What happens on the line, step by step?",
  group: "Why is it so?",
  about: "Echoes on the feed line from the first wave to the standing wave, with every joule accounted for.",
  parameters: bounceParameters,
};
