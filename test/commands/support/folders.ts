/** Folders for tests: made new, filled, read whole. */
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { onTestFinished } from 'vitest';

/** A folder that goes away with the test. */
export function newFolder(): string {
  const path = mkdtempSync(join(tmpdir(), 'tinwright-test-'));
  onTestFinished(() => rmSync(path, { recursive: true, force: true }));
  return path;
}

/** Writes files by their path below the folder. */
export function fill(folder: string, files: Record<string, string>): void {
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
}

/** Every file below a folder with its bytes (latin1, so that nothing is lost), hidden ones too. */
export function contentsOf(folder: string): Record<string, string> {
  const files = readdirSync(folder, { withFileTypes: true, recursive: true }).filter((entry) =>
    entry.isFile(),
  );
  const paths = files.map((entry) => join(entry.parentPath, entry.name)).sort();
  return Object.fromEntries(
    paths.map((path) => [path.slice(folder.length + 1), readFileSync(path, 'latin1')]),
  );
}
