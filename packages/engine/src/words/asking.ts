/** Other questions, as a sentence names them. English. A test holds them against the registry. */
export const askedAs = {
  watts: "Where does my power go?",
  height: "How high should it hang?",
  trim: "How long should it be, and how much do I cut?",
  sky: "Where does my signal go?",
  outside: "Does the outside of the line carry current?",
  radials: "How many radials, how long, up or down?",
} as const;

/** In quotes: “Where does my signal go?”. */
export const asking = (question: keyof typeof askedAs): string => `“${askedAs[question]}”`;
