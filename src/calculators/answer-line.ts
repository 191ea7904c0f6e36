/** One figure of an answer, as it is printed. */
export type AnswerLine = {
  /** Short name without spaces, for keys and tests. */
  readonly id: string;
  readonly label: string;
  /** With its unit: `228.6 mmHg`. */
  readonly text: string;
  /** For the clipboard, with the ASCII minus sign. */
  readonly copied: string;
  /** What stands beside it, in small. */
  readonly note?: string;
};
