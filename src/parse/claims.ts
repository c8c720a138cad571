/** Names may not promise what a kitchen cannot know: see claimIn. */
import { claimIn } from '../domain/claim.ts';
import { error } from './problems.ts';
import { quote } from './quote.ts';
import type { YamlReader } from './yaml/yaml-reader.ts';
import type { YamlPath } from './yaml/yaml-source.ts';

/** Reports a name or a summary that promises what nobody has measured. */
export function checkClaim(reader: YamlReader, ...path: YamlPath): void {
  const claim = claimIn(reader.text(...path) ?? '');
  if (claim === null) return;
  const hint = "Write what is true of any kitchen: 'Made without egg ingredients'.";
  const message = `${quote(claim)} promises more than a kitchen can know`;
  reader.report(error('claim-not-allowed', message, hint), ...path);
}
