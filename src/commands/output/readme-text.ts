/** The page that stands in every output folder; the tracked one is the same, byte for byte. */
export const OUTPUT_README = `# Output
Everything here but this page is made by \`npm run build\` and may be deleted.

- \`site/\` — the website: open \`index.html\` from disk, or put the folder on any static host.
- \`print/\` — PDFs to print or hand out.
- \`data/\` — the same numbers as CSV and JSON.
- \`report.json\` — what was built: files, sizes, checksums, warnings, times.
`;
