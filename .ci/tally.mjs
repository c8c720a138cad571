// The test run in one line, from the reporter's own file; fails when anything failed or nothing ran.
import { existsSync, readFileSync } from 'node:fs';

const [file, status] = process.argv.slice(2);
if (!existsSync(file)) {
  console.log('0 passed, 1 failed');
  process.exit(1);
}
const { numPassedTests, numFailedTests, testResults } = JSON.parse(readFileSync(file, 'utf8'));
// A file that cannot even be loaded counts as a failure of its own.
const broken = testResults.filter((suite) => suite.status === 'failed' && suite.assertionResults.length === 0);
const failed = numFailedTests + broken.length;
console.log(`${numPassedTests} passed, ${failed} failed`);
if (failed > 0 || numPassedTests === 0 || Number(status) !== 0) process.exit(1);
