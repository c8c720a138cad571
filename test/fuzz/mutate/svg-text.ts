/** Changes that know SVG: attributes exchanged, path commands and numbers moved, elements nested, active content. */
import type { Change } from './any-text.ts';
import { NASTY_VALUES } from './nasty.ts';

const ACTIVE = [
  '<script>x</script>',
  '<!DOCTYPE svg [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]>',
  '<image href="file:///etc/passwd"/>',
  '<use href="#a"/>',
  '<style>*{}</style>',
  '<a href="javascript:x"><path d="M0 0h9v9z"/></a>',
  '<g transform="scale(1e300)">',
  '<g transform="rotate(45) skewX(90)">',
  '<path d="M0 0A1e-9 1e9 45 1 1 5 5z"/>',
  '<path d="M0,0 C1e9,1 2,2e9 3,3 z m1 1 q 0 0 0 0"/>',
  '<circle r="0"/>',
  '<circle cx="5" cy="5" r="-1"/>',
  '<ellipse rx="1e12" ry="1e-12"/>',
  '<polygon points="0,0 1,1"/>',
  '<polygon points="0,0 9,9 9,0 0,9"/>',
  '<rect width="NaN" height="1"/>',
  '<![CDATA[ x ]]>',
  '&#x0;',
  '<!-- -- -->',
];

const putElement: Change = (text, dice) => {
  const ends = [...text.matchAll(/>/g)].map(({ index }) => index + 1);
  const at = ends.length === 0 ? 0 : dice.pick(ends);
  return text.slice(0, at) + dice.pick(ACTIVE) + text.slice(at);
};

const nastyAttribute: Change = (text, dice) => {
  const all = [...text.matchAll(/="[^"]*"/g)];
  if (all.length === 0) return text;
  const { 0: found, index } = dice.pick(all);
  return `${text.slice(0, index)}="${dice.pick(NASTY_VALUES)}"${text.slice(index + found.length)}`;
};

const otherCommand: Change = (text, dice) => {
  const all = [...text.matchAll(/[MLHVCSQTAZmlhvcsqtaz](?=[\s\d-])/g)];
  if (all.length === 0) return text;
  const { index } = dice.pick(all);
  return text.slice(0, index) + dice.pick([...'MLHVCSQTAZmlhvcsqtaze']) + text.slice(index + 1);
};

const hugeCoordinate: Change = (text, dice) => {
  const all = [...text.matchAll(/-?\d+(?:\.\d+)?/g)];
  if (all.length === 0) return text;
  const { 0: found, index } = dice.pick(all);
  const value = dice.pick([
    '0',
    '-0',
    '1e308',
    '-1e308',
    '1e-320',
    '1e400',
    '0.00001',
    '99999',
    `-${found}`,
    `${found}e2`,
  ]);
  return text.slice(0, index) + value + text.slice(index + found.length);
};

export const SVG_TEXT: readonly Change[] = [
  ...[putElement, nastyAttribute, nastyAttribute, otherCommand, otherCommand, hugeCoordinate, hugeCoordinate],
];
