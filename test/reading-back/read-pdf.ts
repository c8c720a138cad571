/** A PDF read back with a reader that shares nothing with its writer: text with places, tags, outline, fonts. */
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface ReadText {
  text: string;
  /** mm from the page's top left; y is the baseline. */
  xMm: number;
  yMm: number;
  widthMm: number;
  sizePt: number;
  /** Which way it reads, down the page positive: (1, 0) for level text. */
  along: { x: number; y: number };
  /** The structure content it belongs to; null for artifacts. */
  contentId: string | null;
}

export interface ReadNode {
  role: string;
  alt?: string;
  children: (ReadNode | string)[];
}

export interface ReadPage {
  widthMm: number;
  heightMm: number;
  texts: ReadText[];
  tree: ReadNode | null;
  links: { url: string | null; description: string }[];
}

export interface ReadOutline {
  title: string;
  items: ReadOutline[];
}

export interface ReadPdf {
  title: string;
  lang: string;
  markInfo: { Marked?: boolean } | null;
  displayTitle: boolean;
  xmp: string;
  outline: ReadOutline[];
  pageLabels: string[] | null;
  destinations: string[];
  pages: ReadPage[];
}

const MM_PER_PT = 25.4 / 72;
type Document = Awaited<ReturnType<typeof getDocument>['promise']>;
type Page = Awaited<ReturnType<Document['getPage']>>;
type Content = Awaited<ReturnType<Page['getTextContent']>>;

function textsOf({ items }: Content, heightPt: number): ReadText[] {
  const open: (string | null)[] = [];
  return items.flatMap((item) => {
    if (!('str' in item)) {
      if (item.type === 'endMarkedContent') open.pop();
      else open.push(item.id ?? null);
      return [];
    }
    if (item.str.trim() === '') return [];
    const [a = 0, b = 0, , , x = 0, y = 0] = item.transform as number[];
    return [
      {
        text: item.str,
        xMm: x * MM_PER_PT,
        yMm: (heightPt - y) * MM_PER_PT,
        widthMm: item.width * MM_PER_PT,
        sizePt: Math.hypot(a, b),
        along: { x: a / Math.hypot(a, b), y: -b / Math.hypot(a, b) },
        contentId: open.at(-1) ?? null,
      },
    ];
  });
}

interface RawNode {
  role?: string;
  alt?: string;
  id?: string;
  children?: RawNode[];
}

function nodeOf(raw: RawNode): ReadNode | string {
  if (raw.role === undefined) return raw.id ?? '';
  const children = (raw.children ?? []).map(nodeOf);
  return { role: raw.role, children, ...(raw.alt === undefined ? {} : { alt: raw.alt }) };
}

async function readPage(page: Page): Promise<ReadPage> {
  const { width, height } = page.getViewport({ scale: 1 });
  const content = await page.getTextContent({ includeMarkedContent: true });
  const raw = (await page.getStructTree()) as RawNode | null;
  const tree = raw === null ? null : nodeOf(raw);
  const annotations = (await page.getAnnotations()) as {
    subtype: string;
    url?: string;
    contentsObj?: { str: string };
  }[];
  return {
    widthMm: width * MM_PER_PT,
    heightMm: height * MM_PER_PT,
    texts: textsOf(content, height),
    tree: typeof tree === 'string' ? null : tree,
    links: annotations
      .filter(({ subtype }) => subtype === 'Link')
      .map(({ url, contentsObj }) => ({ url: url ?? null, description: contentsObj?.str ?? '' })),
  };
}

const outlineOf = (items: { title: string; items: unknown[] }[] | null): ReadOutline[] =>
  (items ?? []).map(({ title, items: below }) => ({ title, items: outlineOf(below as never) }));

/** Throws when the bytes are not a PDF. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const task = getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 });
  const document = await task.promise;
  const { info } = (await document.getMetadata()) as { info: { Title?: string; Language?: string } };
  const preferences = (await document.getViewerPreferences()) as { DisplayDocTitle?: boolean } | null;
  const raw = new TextDecoder().decode(bytes);
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1)
    pages.push(await readPage(await document.getPage(number)));
  const read = {
    title: info.Title ?? '',
    lang: info.Language ?? '',
    markInfo: (await document.getMarkInfo()) as ReadPdf['markInfo'],
    displayTitle: preferences?.DisplayDocTitle ?? false,
    xmp: /<\?xpacket begin[\s\S]*?<\?xpacket end/.exec(raw)?.[0] ?? '',
    outline: outlineOf((await document.getOutline()) as never),
    pageLabels: await document.getPageLabels(),
    destinations: Object.keys(await document.getDestinations()),
    pages,
  };
  await task.destroy();
  return read;
}
