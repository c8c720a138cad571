/** Where the names and links of a PDF lead, as page numbers, by a reader that shares nothing with its writer. */
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface InnerLink {
  /** Page it stands on. */
  from: number;
  /** Page it leads to. */
  to: number;
  description: string;
}

/** Links within the document. Throws for one that leads nowhere. */
export async function innerLinks(bytes: Uint8Array): Promise<InnerLink[]> {
  const task = getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 });
  const document = await task.promise;
  const places = new Map<string, number>();
  for (const [name, target] of Object.entries(await document.getDestinations())) {
    const page = (target as unknown[])[0] as { num: number; gen: number };
    places.set(name, (await document.getPageIndex(page)) + 1);
  }
  const links: InnerLink[] = [];
  for (let from = 1; from <= document.numPages; from += 1) {
    const annotations = (await (await document.getPage(from)).getAnnotations()) as {
      dest?: string | null;
      contentsObj?: { str: string };
    }[];
    for (const { dest, contentsObj } of annotations) {
      if (typeof dest !== 'string') continue;
      const to = places.get(dest);
      if (to === undefined) throw new Error(`page ${from} links to '${dest}', which is nowhere`);
      links.push({ from, to, description: contentsObj?.str ?? '' });
    }
  }
  await task.destroy();
  return links;
}
