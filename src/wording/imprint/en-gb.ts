import { britishDate } from '../date.ts';
import type { ImprintWords } from './imprint-words.ts';

export const enGbImprint: ImprintWords = {
  date: britishDate,
  edition: (number, date, note) => `Edition ${number}, ${date}.${note === '' ? '' : ` ${note}.`}`,
  copying: 'Copying',
  preparedFor: 'Prepared for',
  site: (address) => `The charts, and how each figure was worked out, are also at ${address}.`,
  printing: 'Print at 100 %, not fitted to the page: templates and scale bars are at true size.',
  cautions: [
    'Caution: the sheets say how much, never whether it is baked. Test every cake as its recipe says.',
    'Caution: allergens are those of the packets that this kitchen buys. Read your own.',
    'Caution: raw egg and raw flour can carry germs. Do not taste batter.',
  ],
  files: (count) => `${count} ${count === 1 ? 'file' : 'files'}:`,
  checksums: (file) =>
    `${file} holds the SHA-256 of each. To see that nothing was changed on the way: sha256sum --check ${file}`,
};
