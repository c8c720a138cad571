/** The kitchen's house style and the further ones it prints in, with the files that they name. */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Problem } from '../domain/problem.ts';
import { missingFile, parseHouseStyleYaml } from '../parse/house-style.ts';
import type { KitchenExtras } from '../parse/kitchen-extras.ts';
import { parseLogoSvg } from '../parse/logo.ts';
import { suggest } from '../parse/nearest.ts';
import { error, warning } from '../parse/problems.ts';
import { quote } from '../parse/quote.ts';
import { isSound } from '../parse/yaml/yaml-reader.ts';
import { listFiles } from './folder-listing.ts';
import { linkProblem, readText, sizeProblem, whatIsBelow } from './safe-file.ts';

const FOLDER = 'house-styles';
/** A typeface with every sign of Chinese has about this. */
const LARGEST_ASSET_BYTES = 8 * 1_048_576;

/** One style from its file. */
export async function readHouseStyle(
  folder: string,
  path: string,
): Promise<{ style: HouseStyle | null; problems: Problem[] }> {
  const text = await readText(folder, path);
  if (!text.ok) return { style: null, problems: text.problems };
  const { style, files, problems } = parseHouseStyleYaml(text.value, path);
  for (const file of files) {
    const found = await whatIsBelow(folder, file.path);
    if (found === 'link') problems.push({ ...linkProblem(file.path), ...file.place });
    else if (found !== 'file') problems.push(missingFile(file));
    else {
      const tooLarge = await sizeProblem(
        folder,
        file.path,
        LARGEST_ASSET_BYTES,
        'Give a typeface with fewer signs, or a simpler drawing.',
      );
      if (tooLarge !== null) problems.push({ ...tooLarge, ...file.place });
    }
  }
  if (style === null || !isSound(problems)) return { style: null, problems };
  const logo = await readLogo(folder, style.logo);
  return { style: { ...style, ...logo.drawn }, problems: [...problems, ...logo.problems] };
}

/** What prints draw of the logo; its file is known to be there. */
async function readLogo(
  folder: string,
  path: string | undefined,
): Promise<{ drawn: Pick<HouseStyle, 'logoDrawing'>; problems: Problem[] }> {
  if (path === undefined) return { drawn: {}, problems: [] };
  const text = await readText(folder, path);
  if (!text.ok) return { drawn: {}, problems: text.problems };
  const { drawing, problems } = parseLogoSvg(text.value, path);
  return { drawn: drawing === null ? {} : { logoDrawing: drawing }, problems };
}

export interface HouseStylesOutcome {
  /** In the order that the kitchen names them. */
  styles: { id: string; style: HouseStyle }[];
  problems: Problem[];
}

function unknown(id: string, known: readonly string[]): Problem {
  const message = `There is no house style ${quote(id)} below ${FOLDER}`;
  return error('house-style-unknown', message, suggest(id, known, 'house styles'));
}

function unused(id: string): Problem {
  const hint = `Add 'house_styles: [${id}]' to kitchen.yaml to print in it too, or delete the file.`;
  return warning('house-style-unused', `Nothing is printed in ${quote(id)}`, hint);
}

/** The further styles. Every file is checked, whether the kitchen names it or not. */
export async function readHouseStyles(
  folder: string,
  extras: KitchenExtras | null,
): Promise<HouseStylesOutcome> {
  const { files, problems } = await listFiles(folder, FOLDER, '.yaml');
  const read = new Map<string, HouseStyle | null>();
  for (const { id, file } of files) {
    const { style, problems: found } = await readHouseStyle(folder, file);
    problems.push(...found);
    read.set(id, style);
    const named = extras === null || extras.houseStyles.some((wanted) => wanted.id === id);
    if (!named) problems.push({ ...unused(id), file });
  }
  const wanted = extras?.houseStyles ?? [];
  for (const { id, place } of wanted) {
    if (!read.has(id)) problems.push({ ...unknown(id, [...read.keys()]), ...place });
  }
  const styles = wanted.flatMap(({ id }) => {
    const style = read.get(id);
    return style ? [{ id, style }] : [];
  });
  return { styles, problems };
}
