/** The two text files that go with a set of prints: its imprint, and the checksums of everything else. */
import type { Kitchen } from '../../domain/kitchen.ts';
import type { BookletSettings } from '../../domain/printable.ts';
import { imprintWordsFor } from '../../wording/imprint/index.ts';

export const IMPRINT = 'imprint.txt';
export const CHECKSUMS = 'checksums.txt';

export interface Edition {
  number: number;
  /** ISO date that stands on the prints. */
  dated: string;
}

/** `paths` are the prints, in order. */
export function imprintText(
  kitchen: Kitchen,
  { editionNote = '', licence, preparedFor }: BookletSettings,
  { number, dated }: Edition,
  paths: readonly string[],
): string {
  const words = imprintWordsFor(kitchen.locale);
  const people = [kitchen.name, ...(kitchen.baker === undefined ? [] : [kitchen.baker]), kitchen.place];
  const said = [
    `${people.join(', ')}.`,
    words.edition(number, words.date(dated), editionNote),
    ...(licence === undefined ? [] : [`${words.copying}. ${licence}`]),
    ...(preparedFor === undefined ? [] : [`${words.preparedFor} ${preparedFor}.`]),
    ...(kitchen.siteUrl === undefined ? [] : [words.site(kitchen.siteUrl)]),
    words.printing,
    ...words.cautions,
    words.checksums(CHECKSUMS),
    words.files(paths.length),
  ];
  return `${said.join('\n\n')}\n\n${paths.map((path) => `    ${path}`).join('\n')}\n`;
}

/** As `sha256sum` writes it, so that `sha256sum --check` reads it. */
export function checksumsText(files: readonly { path: string; sha256: string }[]): string {
  return files.map(({ path, sha256 }) => `${sha256}  ${path}\n`).join('');
}
