/**
 * Where a function that rises from below 0 to above it crosses 0, to the last digit of a double.
 * The interval is halved until its middle is one of its ends: at most some 1,100 times.
 */
export function bisect(rising: (x: number) => number, low: number, high: number): number {
  let [below, above] = [low, high];
  for (;;) {
    const middle = below + (above - below) / 2;
    if (middle <= below || middle >= above) return above;
    if (rising(middle) < 0) below = middle;
    else above = middle;
  }
}
