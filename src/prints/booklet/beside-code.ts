/** The opening of a recipe with a code at its right that leads to the page behind it. */
import { drawPageCode, pageCode } from '../sheet/page-code.ts';
import { type Block, keptTogether } from '../sheet/strip.ts';

const SIDE_MM = 18;
const GAP_MM = 4;

/** Where the code leads; without a site there is none. */
export interface CodeTarget {
  siteUrl: string | null;
  path: string;
  text: string;
}

/** The blocks kept together, narrower where the code stands beside them. */
export function besideCode(blocks: readonly Block[], { siteUrl, path, text }: CodeTarget): Block {
  const code = pageCode(siteUrl ?? undefined, path, text);
  return (widthMm, context) => {
    const textMm = code === null ? widthMm : widthMm - SIDE_MM - GAP_MM;
    const [first, ...rest] = keptTogether(blocks.flatMap((block) => block(textMm, context)));
    if (!first || code === null) return first ? [first, ...rest] : rest;
    return [
      {
        ...first,
        draw(surface, xMm, yMm) {
          first.draw(surface, xMm, yMm);
          const box = { xMm: xMm + widthMm - SIDE_MM, yMm, widthMm: SIDE_MM, heightMm: SIDE_MM };
          drawPageCode(surface, context, code, { code: box, link: box }, () => undefined);
        },
      },
      ...rest,
    ];
  };
}
