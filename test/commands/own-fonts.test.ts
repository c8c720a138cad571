import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { compress } from 'wawoff2';
import { readBundledFont } from '../../src/pdf/bundled-fonts.ts';
import { madeVariable } from '../samples/variable-font.ts';
import { ask } from './support/command-line.ts';

const folder = mkdtempSync(join(tmpdir(), 'own-fonts-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const regular = readBundledFont('bundled:Source Sans 3/400Regular');
if (!regular.ok) throw new Error('no font');
const { bytes } = regular.value;

/** A kitchen whose text and headings are set in a font of its own. */
function kitchenWith(name: string, font: Uint8Array): string {
  const kitchen = join(folder, name.replace('.', '-'));
  cpSync('test/kitchens/good/minimal', kitchen, { recursive: true });
  writeFileSync(join(kitchen, 'assets', name), font);
  const path = join(kitchen, 'house-style.yaml');
  const style = readFileSync(path, 'utf8')
    .replace('text: bundled:Source Sans 3/400Regular\n', `text: assets/${name}\n`)
    .replace(/heading: .*/, `heading: assets/${name}`);
  writeFileSync(path, style);
  return kitchen;
}

describe('tinwright check, of a kitchen with a font of its own', () => {
  it('passes a WOFF2', async () => {
    const kitchen = kitchenWith('Own.woff2', await compress(bytes));
    const answer = await ask('check', '--content', kitchen);
    expect(answer.stderr).toBe('');
    expect(answer.code).toBe(0);
  });

  it('names a variable font, once, with the style’s file', async () => {
    const kitchen = kitchenWith('Moving.ttf', madeVariable(bytes));
    const answer = await ask('check', '--content', kitchen);
    expect(answer.code).toBe(1);
    expect(answer.stderr.match(/font-variable/g)).toHaveLength(1);
    expect(answer.stderr).toContain(
      "house-style.yaml: error [font-variable] the font 'assets/Moving.ttf' is a variable font",
    );
  });

  it('names one that cannot be read', async () => {
    const kitchen = kitchenWith('Broken.woff2', new TextEncoder().encode('wOF2 and no more'));
    const answer = await ask('check', '--content', kitchen, '--json');
    expect(answer.code).toBe(1);
    expect(answer.stdout).toContain('font-unreadable');
    expect(JSON.parse(answer.stdout).ok).toBe(false);
  });
});
