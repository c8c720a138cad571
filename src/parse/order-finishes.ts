/** `finishes` of a tier: which finish, and the way it is used there, from the inside out. */
import { type FinishAsk, USES } from '../domain/order.ts';
import type { KnownNames, NamedKind } from './known-names.ts';
import { readName } from './order-names.ts';
import { error } from './problems.ts';
import { quote } from './quote.ts';
import { present, type YamlReader } from './yaml/yaml-reader.ts';
import type { YamlPath } from './yaml/yaml-source.ts';

/** The finishes of a list that can be used; the others are reported at their places. */
export function readFinishAsks(
  reader: YamlReader,
  path: YamlPath,
  kind: NamedKind,
  known: KnownNames,
): FinishAsk[] {
  const found: FinishAsk[] = [];
  for (let index = 0; index < reader.items(...path); index += 1) {
    const at = [...path, index];
    const finishId = readName(reader, [...at, 'finish'], kind, known);
    const use = reader.word(USES, ...at, 'use');
    if (finishId === undefined || use === undefined) continue;
    if (found.some((one) => one.finishId === finishId && one.use === use)) {
      const message = `${quote(finishId)} stands here twice as ${use}`;
      reader.report(error('item-repeated', message, 'Delete one of the two.'), ...at);
    } else found.push({ finishId, use, ...present({ colour: reader.text(...at, 'colour')?.trim() }) });
  }
  return found;
}
