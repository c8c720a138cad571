/** `npm run words [-- FILE]`: the table of all sentences, to a file or to the terminal. */
import { writeFileSync } from 'node:fs';
import { reviewTable } from '../wording/review/review-table.ts';

const [file] = process.argv.slice(2);
if (file === undefined) process.stdout.write(reviewTable());
else writeFileSync(file, reviewTable());
