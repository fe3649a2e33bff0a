/** How `watts` is listed: what it is asked as, and with what. */
import type { QuestionListing } from "../common/question";

export const wattsListing: QuestionListing = {
  id: "watts",
  asked: "Where does my power go?",
  group: "Nobody hears me",
  about: "Watts at every joint, heat in every part, in the wires and in the soil, and what leaves for the sky.",
  parameters: [],
};
