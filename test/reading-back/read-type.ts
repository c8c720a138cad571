/** Which font, how large and how high its x: every text of a PDF with the type it is set in, from the file itself. */
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { objectsLike, rawObjects } from './raw-objects.ts';

export interface TypedText {
  page: number;
  text: string;
  /** 'SourceSans3-SemiBold'. */
  fontName: string;
  sizePt: number;
  /** Height of a lower-case x at this size, mm, by the font's descriptor in the file. */
  xHeightMm: number;
}

const MM_PER_PT = 25.4 / 72;
const withoutSubset = (name: string): string => name.replace(/^[A-Z]{6}\+/, '');

/** Heights of x by font, thousandths of the size. */
function xHeights(bytes: Uint8Array): Map<string, number> {
  const descriptors = objectsLike(rawObjects(bytes), /\/Type \/FontDescriptor/);
  return new Map(
    descriptors.map(({ head }) => [
      withoutSubset(/\/FontName \/(\S+)/.exec(head)?.[1] ?? ''),
      Number(/\/XHeight ([\d.]+)/.exec(head)?.[1]),
    ]),
  );
}

/** In reading order. Throws when a font has no x-height in the file. */
export async function readType(bytes: Uint8Array): Promise<TypedText[]> {
  const heights = xHeights(bytes);
  const task = getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 });
  const document = await task.promise;
  const texts: TypedText[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    await page.getOperatorList();
    const { items } = await page.getTextContent();
    for (const item of items) {
      if (!('str' in item) || item.str.trim() === '') continue;
      const font = page.commonObjs.get(item.fontName) as { name: string };
      const fontName = withoutSubset(font.name);
      const [a = 0, b = 0] = item.transform as number[];
      const sizePt = Math.hypot(a, b);
      const height = heights.get(fontName);
      if (height === undefined || !(height > 0)) throw new Error(`no x-height for ${fontName}`);
      texts.push({
        page: number,
        text: item.str,
        fontName,
        sizePt,
        xHeightMm: (height / 1000) * sizePt * MM_PER_PT,
      });
    }
  }
  await task.destroy();
  return texts;
}
