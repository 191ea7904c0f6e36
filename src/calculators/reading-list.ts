/** The readings of a list, as typed: parted by semicolons, line ends, or commas before a space; a decimal comma stays one. */
export const readingsOfList = (typed: string): readonly string[] =>
  typed
    .split(/[;\n]|,\s/u)
    .map((part) => part.trim())
    .filter((part) => part !== '');

export type ListedReading = {
  readonly carburettor: number;
  readonly text: string;
  /** The engine speed that stood behind an `@`. */
  readonly speedText?: string;
};

/**
 * The same with their carburettors: `4: 187` names its own, a reading without a label counts on from the one before.
 * Behind an `@` stands the engine speed at which it was read: `4: 187 @ 2150`.
 */
export const labelledReadings = (typed: string): readonly ListedReading[] => {
  let carburettor = 0;
  return readingsOfList(typed).map((part) => {
    const labelled = /^(\d+)\s*:(.*)/su.exec(part);
    carburettor = labelled ? Number(labelled[1]) : carburettor + 1;
    const [text, ...speed] = (labelled?.[2] ?? part).split('@') as [string, ...string[]];
    return {
      carburettor,
      text: text.trim(),
      ...(speed.length > 0 && { speedText: speed.join('@').trim() }),
    };
  });
};
