// The test runs in one line, from the reporter's own files; fails when anything failed or one of them ran nothing.
import { existsSync, readFileSync } from 'node:fs';

const [status, ...files] = process.argv.slice(2);
const runs = files.map((file) => {
  if (!existsSync(file)) return { passed: 0, failed: 1 };
  const { numPassedTests, numFailedTests, testResults } = JSON.parse(readFileSync(file, 'utf8'));
  // A file that cannot even be loaded counts as a failure of its own.
  const broken = testResults.filter((suite) => suite.status === 'failed' && suite.assertionResults.length === 0);
  return { passed: numPassedTests, failed: numFailedTests + broken.length };
});
const sum = (of) => runs.reduce((total, run) => total + of(run), 0);
const failed = sum((run) => run.failed);
console.log(`${sum((run) => run.passed)} passed, ${failed} failed`);
const ranNothing = runs.some((run) => run.passed === 0);
if (failed > 0 || ranNothing || Number(status) !== 0) process.exit(1);
