/**
 * What machines read about a published site: a sitemap (sitemaps.org, 0.9), a feed (Atom, RFC 4287) and a web app
 * manifest (W3C). Sitemap and feed need absolute addresses, and so a `site_url`.
 */

import { aroundWordsFor } from '../../wording/around/index.ts';
import { escapeHtml } from '../escape-html.ts';
import type { Asset } from '../site-assets.ts';
import type { SiteData } from '../site-data.ts';

/** Every page but the one for missing pages, in the order of their addresses. */
function sitemap(site: string, paths: readonly string[], edition: string): string {
  const entries = [...paths]
    .filter((path) => path !== '404.html')
    .sort()
    .map((path) => `<url><loc>${escapeHtml(`${site}/${path}`)}</loc><lastmod>${edition}</lastmod></url>`);
  return `<?xml version="1.0" encoding="UTF-8"?>\n<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">\n${entries.join('\n')}\n</urlset>\n`;
}

function feed(site: string, data: SiteData): string {
  const updated = `${data.edition}T00:00:00Z`;
  const title = aroundWordsFor(data.lang).feed.title(data.kitchenName);
  const entries = data.recipePages.map(
    ({ path, name, summary }) =>
      `<entry><id>${escapeHtml(`${site}/${path}`)}</id><title>${escapeHtml(name)}</title><updated>${updated}</updated><link href="${escapeHtml(`${site}/${path}`)}"/><summary>${escapeHtml(summary)}</summary></entry>`,
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${data.lang}"><id>${escapeHtml(`${site}/`)}</id><title>${escapeHtml(title)}</title><updated>${updated}</updated><author><name>${escapeHtml(data.kitchenName)}</name></author><link rel="self" href="${escapeHtml(`${site}/feed.xml`)}"/><link href="${escapeHtml(`${site}/`)}"/>\n${entries.join('\n')}\n</feed>\n`;
}

function manifest(data: SiteData): string {
  return `${JSON.stringify(
    {
      name: data.kitchenName,
      short_name: data.kitchenName,
      start_url: 'planner.html',
      scope: './',
      display: 'standalone',
      lang: data.lang,
      background_color: data.themeColour.light,
      theme_color: data.themeColour.light,
      icons: [
        ...(data.icon === null ? [] : [{ src: data.icon, sizes: 'any', type: 'image/svg+xml' }]),
        { src: 'pictures/icon-192.png', sizes: '192x192', type: 'image/png' },
        { src: 'pictures/icon-512.png', sizes: '512x512', type: 'image/png' },
      ],
    },
    null,
    2,
  )}\n`;
}

const MANIFEST = 'manifest.webmanifest';

/** The manifest always; sitemap, feed and robots.txt when it is known where the site will stand. */
export function siteLists(data: SiteData, paths: readonly string[]): Asset[] {
  const site = data.siteUrl?.replace(/\/*$/, '');
  return [
    { path: MANIFEST, bytes: manifest(data) },
    ...(site === undefined
      ? []
      : [
          { path: 'sitemap.xml', bytes: sitemap(site, paths, data.edition) },
          { path: 'feed.xml', bytes: feed(site, data) },
          { path: 'robots.txt', bytes: `User-agent: *\nAllow: /\nSitemap: ${site}/sitemap.xml\n` },
        ]),
  ];
}
