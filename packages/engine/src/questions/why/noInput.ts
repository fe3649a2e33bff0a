/** Why there is nothing to study, and what would mend it. Type only. */
export interface NoInput {
  readonly refused: string;
  readonly mend: string;
}
