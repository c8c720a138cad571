/** What a build made: every file with its size and checksum, every warning, and the only times in the output. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Problem } from '../../domain/problem.ts';
import { sha256 } from '../../read/sha256.ts';
import { PARTS, type Part } from './places.ts';

export interface ReportFile {
  /** From the output folder, with forward slashes. */
  path: string;
  bytes: number;
  sha256: string;
}

export interface Report {
  tinwright: string;
  /** Date that stands in the outputs, ISO. */
  dated: string;
  /** Parts this build made; the others were there already and were left alone. */
  made: Part[];
  files: ReportFile[];
  warnings: Problem[];
  /** Per stage, and for the whole build. */
  milliseconds: Record<string, number>;
}

/**
 * All files of the parts: from the staging folder where they were made, from the output folder where not. Those whose
 * hash is known from when they were written are not read again.
 */
export function filesOf(
  stagingDir: string,
  outputDir: string,
  made: readonly Part[],
  known: (path: string) => ReportFile | undefined = () => undefined,
): ReportFile[] {
  return PARTS.flatMap((part) => {
    const root = made.includes(part) ? stagingDir : outputDir;
    return existsSync(join(root, part)) ? filesBelow(root, part, known) : [];
  });
}

function filesBelow(
  root: string,
  folder: string,
  known: (path: string) => ReportFile | undefined,
): ReportFile[] {
  const entries = readdirSync(join(root, folder), { withFileTypes: true });
  entries.sort((a, b) => (a.name < b.name ? -1 : 1));
  return entries.flatMap((entry) => {
    const path = `${folder}/${entry.name}`;
    return entry.isDirectory() ? filesBelow(root, path, known) : [known(path) ?? fileAt(root, path)];
  });
}

/** What a report tells of a file. */
export const factsOf = (bytes: Uint8Array | string): Omit<ReportFile, 'path'> => ({
  bytes: Buffer.byteLength(bytes),
  sha256: sha256(bytes),
});

function fileAt(root: string, path: string): ReportFile {
  const bytes = readFileSync(join(root, path));
  return { path, ...factsOf(bytes) };
}

/** The report as it is written. */
export function reportText(report: Report): string {
  return `${JSON.stringify(report, null, 2)}\n`;
}
