/**
 * Which test files start first: the long ones, in the order of what they take, so that two workers end together. What
 * is not named here starts after these, large before small. Nothing but the order depends on the list.
 */
import { relative } from 'node:path';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

const LONG_FIRST: readonly string[] = [
  'test/browser/site.test.ts',
  'test/build/killed-build.test.ts',
  'test/site/site.test.ts',
  'test/build/reproducible-build.test.ts',
  'test/build/rebuilds.test.ts',
  'test/browser/planner.test.ts',
  'test/browser/offline.test.ts',
  'test/browser/planner-taps.test.ts',
  'test/browser/planner-orders.test.ts',
  'test/browser/hostile.test.ts',
  'test/browser/keyboard.test.ts',
  'test/commands/output/swap.test.ts',
  'test/commands/make/print-threads.test.ts',
  'test/commands/exit-codes.test.ts',
  'test/build/two-builds.test.ts',
  'test/docs/commands-in-docs.test.ts',
  'test/build/same-numbers.test.ts',
  'test/prints/demo-charts.test.ts',
  'test/compute/lining/lining-pieces.test.ts',
  'test/compute/shapes/contract.test.ts',
  'test/compute/loads/fewest-by-milp.test.ts',
  'test/compute/timeline/plan-week.test.ts',
  'test/commands/mix.test.ts',
  'test/docs/bench.test.ts',
  'test/fuzz/fuzz.test.ts',
  'test/parse/schemas.test.ts',
  'test/build/serve-live.test.ts',
  'test/build/faults/no-permission.test.ts',
  'test/browser/planner-figures.test.ts',
  'test/build/faults/full-disk.test.ts',
  'test/read/hostile/hostile-files.test.ts',
];

/** What a file's turn is: its place in the list, or after all of it. */
function turnOf({ moduleId }: TestSpecification): number {
  const place = LONG_FIRST.indexOf(relative(process.cwd(), moduleId).replaceAll('\\', '/'));
  return place < 0 ? LONG_FIRST.length : place;
}

export class LongFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rest = await super.sort(files);
    return rest.toSorted((a, b) => turnOf(a) - turnOf(b));
  }
}
