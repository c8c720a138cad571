/** The fonts that come with the package: open fonts (SIL OFL 1.1), static cuts, named 'bundled:Family/Cut'. */
const PREFIX = 'bundled:';

export const BUNDLED_FAMILIES = ['Source Sans 3', 'Source Serif 4'] as const;

const WEIGHTS = [
  '200ExtraLight',
  '300Light',
  '400Regular',
  '500Medium',
  '600SemiBold',
  '700Bold',
  '800ExtraBold',
  '900Black',
];

/** The same for every family. */
export const BUNDLED_CUTS: readonly string[] = WEIGHTS.flatMap((weight) => [weight, `${weight}_Italic`]);

export interface BundledFont {
  family: string;
  cut: string;
}

export const isBundledFont = (name: string): boolean => name.startsWith(PREFIX);

/** Family and cut as written, whether there is such a font or not. */
export function bundledFont(name: string): BundledFont {
  const [family = '', cut = ''] = name.slice(PREFIX.length).split('/');
  return { family, cut };
}

export const isKnownBundledFont = ({ family, cut }: BundledFont): boolean =>
  BUNDLED_FAMILIES.some((known) => known === family) && BUNDLED_CUTS.includes(cut);

/** Every name a house style may write. */
export const bundledFontNames = (): string[] =>
  BUNDLED_FAMILIES.flatMap((family) => BUNDLED_CUTS.map((cut) => `${PREFIX}${family}/${cut}`));
