/** A paper of an order on its page: with links to its files in every size. */
import type { Kitchen } from '../domain/kitchen.ts';
import { type BuiltFile, type DownloadLink, downloadLinkIn } from '../views/downloads.ts';
import type { OrderPaper } from '../views/order-papers.types.ts';
import { downloadWordsFor } from '../wording/downloads/index.ts';

export type PaperPart = OrderPaper & { prints: { files: DownloadLink[] }[] };

/** What tells the size at the end of a print's name. */
const SIZE = /^(?:-\d+x\d+(?:in)?|-a[56])?(?:-(?:a4|letter))?\.pdf$/;

/** A paper with its files, whatever their size. */
export function paperPart(paper: OrderPaper, files: readonly BuiltFile[], { locale }: Kitchen): PaperPart {
  const link = downloadLinkIn(downloadWordsFor(locale));
  const filesOf = (start: string): DownloadLink[] =>
    files
      .filter(({ path }) => path.startsWith(start) && SIZE.test(path.slice(start.length)))
      .map((file) => link(file));
  const prints = paper.prints.map((one) => ({ ...one, files: filesOf(`print/${one.stem}`) }));
  return { ...paper, prints, forText: prints.length > 1 ? '' : paper.forText };
}
