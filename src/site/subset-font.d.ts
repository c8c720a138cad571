/** The package ships no types. */
declare module 'subset-font' {
  function subsetFont(
    font: Buffer,
    text: string,
    options?: { targetFormat?: 'woff2' | 'woff' | 'sfnt'; keepFeatures?: string[]; noHinting?: boolean },
  ): Promise<Buffer>;
  export = subsetFont;
}
