const TYPES: Record<string, string> = {
  css: 'text/css; charset=utf-8',
  csv: 'text/csv; charset=utf-8',
  html: 'text/html; charset=utf-8',
  ico: 'image/x-icon',
  ics: 'text/calendar; charset=utf-8',
  jpg: 'image/jpeg',
  js: 'text/javascript; charset=utf-8',
  json: 'application/json; charset=utf-8',
  md: 'text/markdown; charset=utf-8',
  pdf: 'application/pdf',
  png: 'image/png',
  svg: 'image/svg+xml; charset=utf-8',
  ttf: 'font/ttf',
  txt: 'text/plain; charset=utf-8',
  webmanifest: 'application/manifest+json; charset=utf-8',
  woff: 'font/woff',
  woff2: 'font/woff2',
  xml: 'application/xml; charset=utf-8',
  zip: 'application/zip',
};

/** The media type for a file name; bytes that a browser only saves when the ending is unknown. */
export function contentType(path: string): string {
  const ending = path.slice(path.lastIndexOf('.') + 1).toLowerCase();
  return TYPES[ending] ?? 'application/octet-stream';
}
