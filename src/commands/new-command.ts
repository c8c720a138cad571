/** `new`: a kitchen of one's own, ready to build, from a few questions. */
import { resolve } from 'node:path';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { type KitchenAnswers, usualAnswers } from './new/answers.ts';
import { type Asking, terminalAsking } from './new/asking.ts';
import { askKitchen } from './new/questions.ts';
import { starterFiles } from './new/starter-files.ts';
import { newFolderProblem, writeKitchen } from './new/write-kitchen.ts';
import { counted, refuseUsage, usageProblem } from './problem-report.ts';
import type { Terminal } from './terminal.ts';

export interface NewOptions {
  yes: boolean;
}

export interface NewEffects {
  /** Null where nobody can answer. */
  asking(): Promise<Asking | null>;
  /** ISO date of the kitchen's first edition. */
  today(): string;
}

const processEffects: NewEffects = {
  asking: async () => (process.stdin.isTTY && process.stdout.isTTY ? terminalAsking() : null),
  today: () => {
    const now = new Date();
    const two = (number: number): string => String(number).padStart(2, '0');
    return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  },
};

/** Runs the command; exit 2 when the folder will not do, or when nobody answers. Nothing is written then. */
export async function runNew(
  folder: string,
  { yes }: NewOptions,
  terminal: Terminal,
  effects: NewEffects = processEffects,
): Promise<ExitCode> {
  const wrong = newFolderProblem(folder);
  if (wrong !== null) return refuseUsage([wrong], terminal);
  const asking = yes ? null : await effects.asking();
  if (!yes && asking === null) return refuseUsage([nobodyProblem(folder)], terminal);
  const answers: KitchenAnswers | null = asking === null ? usualAnswers() : await askKitchen(asking);
  if (answers === null) return refuseUsage([givenUpProblem(folder)], terminal);
  const files = starterFiles(resolve(folder), answers, effects.today());
  writeKitchen(folder, files);
  terminal.say(doneText(folder, files.length));
  return EXIT.done;
}

function doneText(folder: string, count: number): string {
  const content = folder === 'content' ? '' : ` --content ${/\s/.test(folder) ? `"${folder}"` : folder}`;
  return [
    `Wrote ${counted(count, 'file')} into ${folder}. Its recipe is a starting figure: bake it once, then write your own.`,
    `    npx tinwright check${content}`,
    `    npx tinwright build${content}`,
  ].join('\n');
}

function nobodyProblem(folder: string) {
  return usageProblem(
    'new-nobody-to-ask',
    'There are questions to answer, but no terminal to ask them in',
    `Add --yes for the usual answers: 'tinwright new ${folder} --yes'.`,
  );
}

function givenUpProblem(folder: string) {
  return usageProblem(
    'new-given-up',
    'The questions were not answered to the end; nothing was written',
    `Start again, or take the usual answers: 'tinwright new ${folder} --yes'.`,
  );
}
