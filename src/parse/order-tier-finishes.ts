/** Do the finishes of one tier go together, and can each be used as it is asked for? */
import { finishClashes } from '../compute/finishes/clashes.ts';
import type { Finish } from '../domain/finish.ts';
import type { FinishAsk } from '../domain/order.ts';
import { error } from './problems.ts';
import { orList, quote } from './quote.ts';
import type { YamlReader } from './yaml/yaml-reader.ts';
import type { YamlPath } from './yaml/yaml-source.ts';

/** Ways a finish can be used, in the words of the file. */
const usesOf = ({ use }: Finish): string[] => Object.keys(use);

/** Reports uses that the finish's own file does not give. */
export function checkUses(
  reader: YamlReader,
  at: YamlPath,
  asks: readonly FinishAsk[],
  finishes: readonly Finish[],
): void {
  asks.forEach(({ finishId, use }, index) => {
    const finish = finishes.find(({ id }) => id === finishId);
    if (finish === undefined) return;
    if (finish.use[use] === undefined) {
      const hint = `It can be used as ${orList(usesOf(finish))}; or add '${use}' to its file.`;
      const message = `${quote(finishId)} does not say how it is used as ${use}`;
      reader.report(error('finish-use-missing', message, hint), ...at, 'finishes', index, 'use');
    }
  });
}

/** Only what this tier uses of each finish counts: jam that could also coat is a filling here. */
function asUsed(asks: readonly FinishAsk[], finishes: readonly Finish[]): Finish[] {
  return asks.flatMap(({ finishId, use }) => {
    const finish = finishes.find(({ id }) => id === finishId);
    return finish === undefined ? [] : [{ ...finish, use: { [use]: finish.use[use] } }];
  });
}

/** Reports fresh cream under a sheet. */
export function checkClash(
  reader: YamlReader,
  at: YamlPath,
  asks: readonly FinishAsk[],
  finishes: readonly Finish[],
): void {
  for (const { code, message } of finishClashes(asUsed(asks, finishes))) {
    if (code !== 'cream-under-sheet') continue;
    reader.report(
      error('cream-under-sheet', message, 'Choose another filling, or leave the sheet off.'),
      ...at,
      'finishes',
    );
  }
}
