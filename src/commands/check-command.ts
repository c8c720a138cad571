/** `check`: is everything in the content folder right? Reads, says so, writes nothing. */
import type { Content } from '../domain/content.ts';
import type { Problem } from '../domain/problem.ts';
import { readContent } from '../read/content.ts';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { repairIfNeeded } from './output/output-folder.ts';
import { ownFontProblems } from './own-fonts.ts';
import { counted, countText, refuseContent, tellProblems } from './problem-report.ts';
import type { Terminal } from './terminal.ts';

export interface CheckOptions {
  content: string;
  output: string;
  json: boolean;
}

/** The content, and what is wrong with it; null where anything is that a build would refuse. */
async function readChecked(folder: string): Promise<{ content: Content | null; problems: Problem[] }> {
  const { content, problems } = await readContent(folder);
  if (content === null) return { content, problems };
  const fonts = await ownFontProblems(content, folder);
  return { content: fonts.length > 0 ? null : content, problems: [...problems, ...fonts] };
}

/** Runs the command; exit 1 when there are errors, 0 with warnings only. */
export async function runCheck(options: CheckOptions, terminal: Terminal): Promise<ExitCode> {
  repairIfNeeded(options.output);
  const { content, problems } = await readChecked(options.content);
  if (options.json) {
    terminal.say(JSON.stringify({ ok: content !== null, problems }, null, 2));
    return content === null ? EXIT.badContent : EXIT.done;
  }
  if (content === null) return refuseContent(problems, terminal);
  tellProblems(problems, terminal);
  const { recipes, kitchen, ingredients } = content;
  const found = [
    counted(kitchen.tins.length, 'tin'),
    counted(recipes.length, 'recipe'),
    counted(ingredients.length, 'ingredient'),
  ];
  terminal.say(`${options.content}: ${found.join(', ')}; ${countText(problems)}`);
  return EXIT.done;
}
