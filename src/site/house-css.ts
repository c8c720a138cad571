/** The house style as CSS custom properties: the only place where the site's colours and faces come from. */
import type { HouseStyle, Palette } from '../domain/house-style.ts';
import { customProperty } from './logo.ts';

function declarations(palette: Palette): string {
  return Object.entries(palette)
    .map(([key, colour]) => `${customProperty(key)}: ${colour};`)
    .join(' ');
}

/** Colours light and dark, print always light, faces, heading case and the printed page's margins. */
export function houseCss(style: HouseStyle): string {
  const { top, right, bottom, left } = style.marginMm;
  const caps = style.headingCase === 'small capitals' ? 'small-caps' : 'normal';
  return [
    `:root { color-scheme: light dark; ${declarations(style.colours.light)}`,
    `  --font-text: house-text, meanwhile-text, meanwhile-text-2, sans-serif;`,
    `  --font-heading: house-heading, meanwhile-heading, meanwhile-heading-2, serif;`,
    `  --bold-weight: 700; --heading-weight: 400; --heading-caps: ${caps}; }`,
    `@media screen and (prefers-color-scheme: dark) { :root { ${declarations(style.colours.dark)} } }`,
    `@page { margin: ${top}mm ${right}mm ${bottom}mm ${left}mm; }`,
    '',
  ].join('\n');
}
