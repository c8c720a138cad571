/** What quotes say of accepting and paying: `costs: quote` in kitchen.yaml, and `quote` in an order. */
import type { QuoteSettings } from '../domain/costs.ts';
import { parseDays } from './units/days.ts';
import { parseShare } from './units/share.ts';
import { present, type YamlReader } from './yaml/yaml-reader.ts';
import type { YamlPath } from './yaml/yaml-source.ts';

/** The settings at a path; what is wrong is kept in the reader. */
export function readQuoteSettings(reader: YamlReader, ...at: YamlPath): QuoteSettings {
  const days = (key: string): number | undefined =>
    reader.parsed((text) => parseDays(text, { zero: true }), ...at, key);
  return present({
    validDays: reader.parsed((text) => parseDays(text), ...at, 'valid'),
    depositShare: reader.parsed((text) => parseShare(text, { zero: true }), ...at, 'deposit'),
    depositDueDays: days('deposit_due'),
    balanceDueDays: days('balance_due'),
  });
}
