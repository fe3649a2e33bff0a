/** How `listen` is listed: what it is asked as, and with what. */
import type { QuestionListing } from "../common/question";
import { listenParameters } from "./parameters";

export const listenListing: QuestionListing = {
  id: "listen",
  asked: "Does the loss matter for receiving?",
  group: "I hear only noise",
  about:
    "Noise from outside against line and receiver: what the line costs in signal to noise, and what a preamplifier wins.",
  parameters: listenParameters,
};
