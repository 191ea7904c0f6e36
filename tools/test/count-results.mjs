/** Vitest's report. A file that broke before its first test has no failed test in it, so it counts as one. */
export function countVitest(report) {
  const broken = report.testResults.filter(
    (file) => file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed'),
  );
  return { passed: report.numPassedTests, failed: report.numFailedTests + broken.length };
}

/** Playwright's report. Errors outside of any test count one each; a test that passed only when repeated has failed. */
export function countPlaywright(report) {
  const { expected, unexpected, flaky } = report.stats;
  return { passed: expected, failed: unexpected + flaky + report.errors.length };
}
