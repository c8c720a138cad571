/** Changes that know YAML: values exchanged for worse ones, keys renamed, doubled, nested, repeated by alias. */
import type { Dice } from '../dice.ts';
import type { Change } from './any-text.ts';
import { NASTY_KEYS, NASTY_VALUES } from './nasty.ts';

interface KeyValue {
  /** Where the value starts and ends. */
  from: number;
  to: number;
  keyFrom: number;
  key: string;
}

const PAIR = /([\w-]+)(: +)((?:'[^'\n]*'|"[^"\n]*"|[^,}\]\n#])+)/g;

function pairsOf(text: string): KeyValue[] {
  return [...text.matchAll(PAIR)].map(({ 0: all, 1: key = '', 2: colon = '', index }) => ({
    from: index + key.length + colon.length,
    to: index + all.trimEnd().length,
    keyFrom: index,
    key,
  }));
}

function onPair(change: (text: string, pair: KeyValue, dice: Dice) => string): Change {
  return (text, dice) => {
    const pairs = pairsOf(text);
    return pairs.length === 0 ? text : change(text, dice.pick(pairs), dice);
  };
}

const withValue = (text: string, { from, to }: KeyValue, value: string): string =>
  text.slice(0, from) + value + text.slice(to);

const quotedValue = (value: string): string => `"${JSON.stringify(value).slice(1, -1)}"`;

const nastyValue = onPair((text, pair, dice) => {
  const value = dice.pick(NASTY_VALUES);
  return withValue(text, pair, dice.below(2) === 0 ? value : quotedValue(value));
});

/** A value that is right somewhere else: the kind of slip a parser is most likely to let through. */
const valueOfAnother = onPair((text, pair, dice) => {
  const other = dice.pick(pairsOf(text));
  return withValue(text, pair, text.slice(other.from, other.to));
});

const otherKey = onPair((text, { keyFrom, key }, dice) => {
  const other = dice.below(2) === 0 ? dice.pick(NASTY_KEYS) : dice.pick(pairsOf(text)).key;
  return text.slice(0, keyFrom) + other + text.slice(keyFrom + key.length);
});

const doubledPair = onPair((text, { keyFrom, to }) => {
  const pair = text.slice(keyFrom, to);
  return `${text.slice(0, to)}, ${pair}${text.slice(to)}`;
});

const struckPair = onPair((text, { keyFrom, to }) => text.slice(0, keyFrom) + text.slice(to));

const nested = onPair((text, pair, dice) => {
  const depth = 1 + dice.below(40);
  const value = text.slice(pair.from, pair.to);
  return withValue(text, pair, `${'['.repeat(depth)}${value}${']'.repeat(depth)}`);
});

const swollen = onPair((text, pair, dice) => {
  const value = text.slice(pair.from, pair.to);
  return withValue(text, pair, `[${Array.from({ length: 2 + dice.below(60) }, () => value).join(', ')}]`);
});

const aliased: Change = (text, dice) => {
  const [anchor, alias] = [pairsOf(text), pairsOf(text)].map((pairs) =>
    pairs.length === 0 ? null : dice.pick(pairs),
  );
  if (!anchor || !alias) return text;
  const named = withValue(text, anchor, `&a ${text.slice(anchor.from, anchor.to)}`);
  return named.slice(0, alias.from + 3) + named.slice(alias.from + 3).replace(/: [^\n,}]+/, ': *a');
};

const indented: Change = (text, dice) => {
  const lines = text.split('\n');
  const at = dice.below(lines.length);
  const line = lines[at] ?? '';
  return lines.with(at, dice.pick([`  ${line}`, `\t${line}`, line.trimStart(), `- ${line}`])).join('\n');
};

export const YAML_TEXT: readonly Change[] = [
  ...[nastyValue, nastyValue, nastyValue, nastyValue, valueOfAnother, valueOfAnother, valueOfAnother],
  ...[otherKey, doubledPair, struckPair, struckPair, nested, swollen, aliased, indented],
];
