/** Folders and files that may not be written or read: said in one line with the path and what to do, nothing changed. */
import { chmodSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ask, startAsNobody } from '../../commands/support/command-line.ts';
import { contentsOf, fill, newFolder } from '../../commands/support/folders.ts';
import { layOutFaultKitchen } from '../support/fault-kitchen.ts';

const OLD = { 'site/index.html': 'old', 'print/a.pdf': 'old', 'data/a.csv': 'old', 'report.json': '{}' };

interface Laid {
  content: string;
  output: string;
}

/** A kitchen and an output that everybody may read, and nobody but their owner may change. */
function laidOut(): Laid {
  const folder = newFolder();
  chmodSync(folder, 0o755);
  const [content, output] = [join(folder, 'kitchen'), join(folder, 'output')];
  layOutFaultKitchen(content);
  fill(output, OLD);
  return { content, output };
}

const built = ({ content, output }: Laid) =>
  startAsNobody(['build', '--content', content, '--output', output, '--only', 'data']);

const sayingWhere = (path: string): RegExp =>
  new RegExp(
    `^error: ${path}\\S*: No permission\\. Check who owns it, or choose another folder \\(--content .*\\)\\.\\n$`,
  );

describe('without permission', () => {
  it('to write into the output folder', () => {
    const laid = laidOut();
    chmodSync(laid.output, 0o555);
    const { code, stdout, stderr } = built(laid);
    expect(stderr).toMatch(sayingWhere(laid.output));
    expect([code, stdout, contentsOf(laid.output)]).toEqual([3, '', OLD]);
    chmodSync(laid.output, 0o755);
  });

  it('to read a content file', () => {
    const laid = laidOut();
    const path = join(laid.content, 'ingredients.yaml');
    chmodSync(path, 0o000);
    const { code, stdout, stderr } = built(laid);
    expect(stderr).toMatch(sayingWhere(path));
    expect([code, stdout, contentsOf(laid.output)]).toEqual([3, '', OLD]);
  });

  it('to put the new parts in the place of the old ones: the old output is whole', () => {
    const laid = laidOut();
    chmodSync(laid.output, 0o1777);
    const { code, stdout, stderr } = built(laid);
    expect(stderr).toMatch(/^error: .*No permission\. /);
    expect([code, stdout, contentsOf(laid.output)]).toEqual([3, '', OLD]);
  });
});

it('an output below a file is refused in one line', async () => {
  const { content, output } = laidOut();
  const below = join(output, 'report.json', 'output');
  const { code, stdout, stderr } = await ask('build', '--content', content, '--output', below);
  expect(stderr).toMatch(
    /^error: .*\/report\.json\S*: A file stands where a folder is needed\. Choose another/,
  );
  expect([code, stdout, contentsOf(output)]).toEqual([3, '', OLD]);
});
