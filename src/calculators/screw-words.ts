/** `1`, `1 and 4`, `1, 2 and 4`. */
export const joinedNumbers = (numbers: readonly number[]): string =>
  numbers.length < 2 ? numbers.join('') : `${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`;

/** The carburettors that a screw moves: `1`, or `3 and 4`. */
export const membersWords = (moves: readonly number[]): string =>
  joinedNumbers(moves.flatMap((share, i) => (share === 0 ? [] : [i + 1])));

/** A screw as it is called at the bench, by the carburettors that it moves: `the screw of carburettor 1`. */
export const screwWords = (moves: readonly number[]): string => {
  const members = membersWords(moves).replaceAll(' ', '\u00a0');
  return moves.filter((share) => share !== 0).length === 1
    ? `the screw of carburettor\u00a0${members}`
    : `the screw that moves ${members}`;
};
