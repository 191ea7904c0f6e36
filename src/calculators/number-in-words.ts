const small =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const tens = 'ten twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

/** A whole number below a million in English words: 1234 is “one thousand two hundred and thirty-four”. */
export function numberInWords(value: number): string {
  if (!Number.isInteger(value) || Math.abs(value) >= 1e6) throw new RangeError(`no words for ${value}`);
  if (value < 0) return `minus ${numberInWords(-value)}`;
  if (value < 20) return small[value]!;
  if (value < 100) {
    const rest = value % 10;
    return `${tens[Math.floor(value / 10) - 1]}${rest === 0 ? '' : `-${small[rest]}`}`;
  }
  if (value < 1000) return joined(value, 100, 'hundred');
  return joined(value, 1000, 'thousand');
}

function joined(value: number, size: number, name: string): string {
  const rest = value % size;
  const head = `${numberInWords(Math.floor(value / size))} ${name}`;
  return rest === 0 ? head : `${head}${rest < 100 ? ' and ' : ' '}${numberInWords(rest)}`;
}
