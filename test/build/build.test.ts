import { describe, expect, it } from 'vitest';
import { type BuildEffects, build } from '../../src/build.ts';
import { contentsOf, fill, newFolder } from '../commands/support/folders.ts';

const GOOD = 'test/kitchens/good/minimal';

/** Effects that write nothing, tick 10 ms at every look at the clock, and remember. */
function watched(outputDir: string) {
  const written = new Map<string, string>();
  const stages: string[] = [];
  let now = 0;
  const effects: BuildEffects = {
    clock: () => {
      now += 10;
      return now;
    },
    progress: (stage) => void stages.push(stage),
    write: (path, bytes) => void written.set(path.slice(outputDir.length + 1), String(bytes)),
  };
  return { effects, written, stages };
}

describe('build', () => {
  it('names its stages in order and measures them by the clock it is given', async () => {
    const outputDir = newFolder();
    const { effects, stages } = watched(outputDir);
    const building = build({ contentDir: GOOD, outputDir, parts: ['data'] }, effects);
    await expect(building).rejects.toThrow('report.json was to be swapped in and was not made');
    expect(stages).toEqual(['read', 'compute', 'finishing', 'data', 'report', 'swap']);
    expect(contentsOf(outputDir)).toEqual({});
  });

  it('writes only below its staging folder, and the times only in the report', async () => {
    const outputDir = newFolder();
    const { effects, written } = watched(outputDir);
    await build({ contentDir: GOOD, outputDir, parts: ['data'] }, effects).catch(() => {});
    for (const path of written.keys())
      expect(path).toMatch(/^\.staging-\d+\/(data\/[a-z-]+\/[a-z0-9-]+\.(csv|json)|report\.json)$/);
    const report = [...written].find(([path]) => path.endsWith('report.json'))?.[1] ?? '{}';
    const { milliseconds } = JSON.parse(report) as { milliseconds: Record<string, number> };
    expect(milliseconds).toEqual({ read: 10, compute: 10, finishing: 10, data: 10, report: 10, all: 110 });
  });

  it('gives bad content back as problems, before it touches the output', async () => {
    const outputDir = newFolder();
    fill(outputDir, { 'site/index.html': 'old' });
    const { effects, stages } = watched(outputDir);
    const result = await build({ contentDir: 'nowhere', outputDir, parts: ['data'] }, effects);
    expect(result).toMatchObject({
      outcome: 'content',
      problems: [{ code: 'content-folder-missing', severity: 'error' }],
    });
    expect(stages).toEqual(['read']);
    expect(contentsOf(outputDir)).toEqual({ 'site/index.html': 'old' });
  });

  it('refuses a SOURCE_DATE_EPOCH that is no number of seconds', async () => {
    const { effects } = watched('');
    for (const epoch of ['-1', '1.5', '1e9', '9999999999999', 'now']) {
      const result = await build({ contentDir: GOOD, outputDir: 'nowhere', parts: ['data'], epoch }, effects);
      expect(result).toMatchObject({ outcome: 'usage', problems: [{ code: 'source-date-epoch' }] });
    }
  });
});
