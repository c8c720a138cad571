import { contentsOf } from '../../commands/support/folders.ts';

/** Every file of an output folder, hidden ones too; the times in the report, which alone may differ, are left out. */
export function builtContents(output: string): Record<string, string> {
  const files = contentsOf(output);
  const report = files['report.json'];
  if (report === undefined) return files;
  const { milliseconds: _, ...rest } = JSON.parse(report) as Record<string, unknown>;
  return { ...files, 'report.json': JSON.stringify(rest) };
}
