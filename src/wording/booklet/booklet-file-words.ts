/** How the booklet's files are listed among the downloads. */
export const BOOKLET_FILE_WORDS = {
  about:
    'All recipes, flavours, finishes and tables in one small book: to read on a screen, and to print at home. Print the file to fold on both sides, turned on the short edge, at 100 %; fold the stack and staple it in the fold.',
  read: 'To read',
  fold: 'To print, fold and staple',
  sizes: { a5: 'A5', 'half-letter': 'half US Letter', a4: 'A4', letter: 'US Letter' } as Readonly<
    Record<string, string>
  >,
  link: (size: string): string => `PDF, ${size}`,
};
