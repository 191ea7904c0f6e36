/**
 * Numbers at the top of files of src/calculators that are no constants of nature, of a standard or of the trade, and so
 * not on the page that lists those. By what they are instead.
 */
export const notListed = {
  'follows from a constant that is listed': [
    'afterwardsMinutes', 'criticalRatio', 'cubicInch', 'dayMinutes', 'heights', 'msPerMinute',
    'restingPersonOfOpenCode',
  ],
  'a table whose rows name their sources': [
    'alarmPoints', 'baThreads', 'bsf', 'bsw', 'eh40', 'europe', 'glycolPercents', 'glycolRows', 'isoCoarseThreads',
    'isoFineThreads', 'isoSizes', 'largestNumber', 'unc', 'unf', 'who2000', 'who2010',
  ],
  'where a range of fields or of belief ends': ['bounds', 'largestOffsetPa', 'largestTurns'],
  'how far a method goes': [
    'coefficients', 'control', 'errorWeights', 'largestRatio', 'mostRounds', 'mostTerms', 'pairs', 'points', 'roundsTried',
    'samples', 'series', 'seriesEnd', 'smallestRatio', 'stages', 'step',
  ],
  'how much is read, drawn or written': [
    'ambientDigits', 'clockHours', 'digitsOfSpeed', 'drawnPulls', 'drawnSamples', 'fewestDigits', 'fewestPairs', 'fewestRepeats',
    'halvedQuarters', 'longestList', 'longestNumber', 'longestQuote', 'meaningfulDigits', 'mostDecimals', 'mostDigits', 'mostReadings', 'parts',
    'readingDigits', 'sixtieth', 'smallestTurn',
  ],
  'an invented example of the handbook': [
    'airAndIntakeExample', 'dialExample', 'drawnMinutes', 'effectMmHgExample', 'effectsMmHg', 'firstThreeMmHg', 'fourthMmHgExample',
    'gaugeMmHg', 'heightMExample', 'highestDrawnPpm', 'hoursPerTurn', 'lowDayHPa', 'muchAirChanges', 'oneScrewCylinder', 'oneScrewEngine', 'oneScrewExercises',
    'oneTurnExample', 'roomEngineExample', 'roomExample', 'seaReadingMmHg', 'sharesOfSpread', 'startMmHg', 'threadsExample',
    'toldSwingExample',
  ],
  'a count': ['adjusterNumbers', 'bracketLength', 'usualGroups'],
} as const satisfies Record<string, readonly string[]>; // prettier-ignore
