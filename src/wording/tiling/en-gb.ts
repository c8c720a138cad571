/** British English for large sheets printed on home paper. */
import type { TilingWords } from './tiling-words.ts';

export const enGbTiling: TilingWords = {
  papers: { A4: 'A4', Letter: 'US Letter' },
  title: (title, paper, sheetName, file) =>
    `${title}: ${sheetName} on ${paper}, to be joined. To read it on a screen or aloud: ${file}`,
  subject: (file) => `Sheets to be joined. For reading on a screen or aloud, open ${file}.`,
  join: (lapMm) =>
    `Print at 100 %. Trim the edges that have ticks, lay them ${lapMm} mm over their neighbours, crosses on crosses, and glue.`,
  sheet: (sheet, sheets) => `Sheet ${sheet} of ${sheets}.`,
};
