/** Can the kitchen's own fonts be embedded? Asked by `check`, which makes no prints; bundled ones always can. */
import { isBundledFont } from '../domain/bundled-fonts.ts';
import type { Content } from '../domain/content.ts';
import type { HouseStyle } from '../domain/house-style.ts';
import type { Problem } from '../domain/problem.ts';

const hasOwn = ({ fonts }: HouseStyle): boolean => Object.values(fonts).some((name) => !isBundledFont(name));

/** Variable, broken and packed beyond reading, by name; each once, whatever it is used for. */
export async function ownFontProblems(
  { houseStyle, houseStyles }: Content,
  contentDir: string,
): Promise<Problem[]> {
  const styles = [
    { style: houseStyle, file: 'house-style.yaml' },
    ...houseStyles.map(({ id, style }) => ({ style, file: `house-styles/${id}.yaml` })),
  ].filter(({ style }) => hasOwn(style));
  if (styles.length === 0) return [];
  const { houseFonts } = await import('./make/house-fonts.ts');
  const read = await Promise.all(styles.map(({ style, file }) => houseFonts(style, contentDir, file)));
  return read.flatMap((fonts) => (fonts.ok ? [] : fonts.problems));
}
