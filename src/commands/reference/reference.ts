/** The reference of content files and commands, written from the code that reads them. */
import { commandReference } from './command-reference.ts';
import { contentReference } from './content-reference.ts';

/** The whole page, in Markdown. */
export const referenceText = (): string =>
  [
    '# Reference',
    'What every content file and every command takes. Made from the schemas and the command definitions by `npm run schemas`; a test fails when it is out of date. README.md shows how they are used.',
    commandReference(),
    contentReference(),
    '',
  ]
    .join('\n\n')
    .replace(/\n+$/, '\n');
