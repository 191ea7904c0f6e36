/** Inches of a size as it is written in our tables: `1`, `5/16`, `1 1/8`. */
export const inchFraction = (size: string): number =>
  size.split(' ').reduce((sum, part) => {
    const [over = '', under = '1'] = part.split('/');
    return sum + Number(over) / Number(under);
  }, 0);
