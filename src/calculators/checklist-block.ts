/** What is looked at, and how it must be: a name and its answer, apart. */
export type ChecklistLine = { readonly id: string; readonly item: string; readonly answer: string };

/** Lines, and the point where everybody waits until they are done. */
export type ChecklistPart = { readonly lines: readonly ChecklistLine[]; readonly hold?: string };

export type ChecklistBlock = {
  readonly id: string;
  readonly heading: string;
  readonly parts: readonly ChecklistPart[];
};

/** Longer blocks are not finished in one go (common practice of those who write checklists). */
export const blockLengthLimit = 10;

export const line = (id: string, item: string, answer: string): ChecklistLine => ({ id, item, answer });

export const linesOf = (block: ChecklistBlock): readonly ChecklistLine[] =>
  block.parts.flatMap(({ lines }) => lines);
