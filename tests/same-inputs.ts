import fc from 'fast-check';

// A mutant is caught or not by a test, never by the luck of a draw.
fc.configureGlobal({ seed: 2100, numRuns: 25 });
