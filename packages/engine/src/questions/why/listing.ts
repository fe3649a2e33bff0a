/** How `why` is listed: what it is asked as, and with what. */
import type { QuestionListing } from "../common/question";
import { whyParameters } from "./parameters";

export const whyListing: QuestionListing = {
  id: "why",
  asked: "Why this impedance?",
  group: "Why is it so?",
  about: "Attenuation, voltage, power and weight of a line against its impedance, and where those in use stand.",
  parameters: whyParameters,
};
