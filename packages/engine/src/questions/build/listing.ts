/** How `build` is listed: what it is asked as, and with what. */
import type { QuestionListing } from "../common/question";
import { buildParameters } from "./parameters";

export const buildListing: QuestionListing = {
  id: "build",
  asked: "What are the constants of this line?",
  group: "Why is it so?",
  about: "Impedance, velocity, attenuation and where it arises, from a line's data sheet and from its build.",
  parameters: buildParameters,
};
