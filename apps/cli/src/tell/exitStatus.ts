/** Exit statuses (docs/command-line.md). */
export const exitStatus = {
  answered: 0,
  /** The file or the command is wrong. */
  problems: 2,
  /** The question cannot be answered for this station. */
  refused: 3,
  /** A defect of the program. */
  defect: 70,
  interrupted: 130,
} as const;
