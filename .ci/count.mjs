// Adds up the results that the test runs left in a folder, and prints them as the closing line.
// Names the tests that passed at the second try only. Fails when a test failed, or when there is nothing to add up.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const [folder] = process.argv.slice(2);
const names = existsSync(folder) ? readdirSync(folder) : [];
const runs = names.map((name) => JSON.parse(readFileSync(join(folder, name), 'utf8')));
const total = (of) => runs.reduce((sum, run) => sum + of(run), 0);

const passed = total((run) => run.numPassedTests);
// A file that could not be run at all has no failed test of its own, and counts as one.
const unrun = total(
  (run) =>
    run.testResults.filter((f) => f.status === 'failed' && f.assertionResults.length === 0).length,
);
const failed = total((run) => run.numFailedTests) + unrun;
const skipped = total((run) => run.numPendingTests);
const retried = runs.flatMap((run) =>
  run.testResults.flatMap((f) =>
    f.assertionResults.filter((t) => t.status === 'passed' && t.failureMessages.length > 0),
  ),
);
for (const { fullName, failureMessages } of retried) {
  process.stdout.write(`at the second try: ${fullName}: ${failureMessages[0].split('\n')[0]}\n`);
}
const also = skipped > 0 ? `, ${skipped} skipped` : '';
const again = retried.length > 0 ? `, ${retried.length} at the second try` : '';
process.stdout.write(`${passed} passed, ${failed} failed${also}${again}\n`);
process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
