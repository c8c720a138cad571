/** Everything that stands around the pages: finding, lists for machines, pictures, being offline. */
import type { Content } from '../../domain/content.ts';
import { KEEP_SCRIPT } from '../../views/downloads.ts';
import { pictureOfTin } from '../../views/picture-of-tin.ts';
import { wordsFor } from '../../wording/locales/index.ts';
import { bundleOf } from '../bundles.ts';
import type { Asset } from '../site-assets.ts';
import type { SiteData } from '../site-data.ts';
import { planPath } from '../tin-drawing.ts';
import { FIND_SCRIPT } from './around-pages.ts';
import { FIND_INDEX, findables, findIndexScript } from './find-index.ts';
import { type Pictured, pictures } from './pictures.ts';

const OFFLINE_SCRIPT = 'script/offline.js';
/** What a message shows of a page that has no picture of its own. */
const HOUSE_PICTURE = 'house';

function pagesToPicture(data: SiteData): Pictured[] {
  return [
    { id: HOUSE_PICTURE, title: data.kitchenName, line: data.place },
    ...data.recipePages.map(({ id, name, summary }) => ({ id, title: name, line: summary })),
  ];
}

/** `fonts` are TrueType or OpenType. */
export async function siteAround(
  data: SiteData,
  { kitchen, houseStyle }: Content,
  fonts: { heading: Uint8Array; text: Uint8Array },
): Promise<Asset[]> {
  const words = wordsFor(kitchen.locale);
  const plans = kitchen.tins
    .map((tin) => pictureOfTin(tin, words))
    .sort((a, b) => b.widthMm - a.widthMm)
    .flatMap(({ plan }) => (plan === null ? [] : [planPath(plan)]));
  const [find, offline, keep] = await Promise.all(
    ['find', 'offline/register', 'offline/keep-prints'].map(bundleOf),
  );
  return [
    { path: FIND_SCRIPT, bytes: find ?? '' },
    { path: FIND_INDEX, bytes: findIndexScript(findables(data)) },
    { path: OFFLINE_SCRIPT, bytes: offline ?? '' },
    { path: KEEP_SCRIPT, bytes: keep ?? '' },
    ...(await pictures(pagesToPicture(data), {
      style: houseStyle,
      kitchenName: data.kitchenName,
      fonts,
      plans,
    })),
  ];
}
