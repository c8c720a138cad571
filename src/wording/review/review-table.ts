/** A table of all sentences for native speakers to read: key, British, American. */
import { allWords, sentencesOf } from './all-words.ts';

const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

/** Markdown, a line a sentence. */
export function reviewTable(): string {
  const american = new Map(sentencesOf(allWords('en-US')));
  const lines = sentencesOf(allWords('en-GB')).map(
    ([key, text]) => `| ${key} | ${cell(text)} | ${cell(american.get(key) ?? '')} |`,
  );
  return ['| key | en-GB | en-US |', '| --- | --- | --- |', ...lines, ''].join('\n');
}
