/** The readings of a list, as typed: parted by semicolons, line ends, or commas before a space; a decimal comma stays one. */
export const readingsOfList = (typed: string): readonly string[] =>
  typed
    .split(/[;\n]|,\s+/u)
    .map((part) => part.trim())
    .filter((part) => part !== '');

export type ListedReading = { readonly carburettor: number; readonly text: string };

/** The same with their carburettors: `4: 187` names its own, a reading without a label counts on from the one before. */
export const labelledReadings = (typed: string): readonly ListedReading[] => {
  let carburettor = 0;
  return readingsOfList(typed).map((part) => {
    const labelled = /^(\d+)\s*:\s*(.*)$/su.exec(part);
    carburettor = labelled ? Number(labelled[1]) : carburettor + 1;
    return { carburettor, text: labelled?.[2] ?? part };
  });
};
