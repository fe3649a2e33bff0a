/** How `line` is listed: what it is asked as, and with what. */
import type { QuestionListing } from "../common/question";
import { parameterDefinitions } from "./parameters";

export const lineListing: QuestionListing = {
  id: "line",
  asked: "Which feed line suits?",
  group: "What shall I put up, buy or cut",
  about:
    "Watts into the antenna in every band through every line that could lie there, with SWR, voltage, weight, bend and price, and what else could be done.",
  parameters: parameterDefinitions,
};
