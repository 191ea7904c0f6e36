const shapes = [
  'M6 0A6 6 0 1 1-6 0 6 6 0 1 1 6 0Z',
  'M-5.5-5.5h11v11h-11z',
  'M0-6.5 7 5.5H-7z',
  'M0-7.5 7.5 0 0 7.5-7.5 0z',
  'M0 6.5-7-5.5H7z',
  'M-2.5-7h5v4.5H7v5H2.5V7h-5V2.5H-7v-5h4.5z',
  'M-3.5-6.5h7L7 0 3.5 6.5h-7L-7 0z',
  'M-7-5.5 0-2.5 7-5.5 3 0 7 5.5 0 2.5-7 5.5-3 0z',
];

/** The mark of a carburettor, told from the others by shape and never by colour; 16 × 16 about its place. */
export const CarburettorMark = ({ number }: { number: number }) => (
  <path d={shapes[number - 1] ?? shapes[0]} />
);
