/** How `limits` is listed: what it is asked as, and with what. */
import type { QuestionListing } from "../common/question";
import { limitParameters } from "./parameters";

export const limitsListing: QuestionListing = {
  id: "limits",
  asked: "Will anything arc or overheat?",
  group: "It gets hot, or bites in the shack",
  about:
    "Voltage, current and temperature along every line, and what each part stands: the first thing to fail, and at what power.",
  parameters: limitParameters,
};
