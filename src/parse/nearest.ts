import { distance } from 'fastest-levenshtein';

/**
 * The valid name most like what was written, or null when none is near enough to be meant.
 * @example nearest('buter', ['butter', 'milk']) // 'butter'
 */
export function nearest(written: string, valid: readonly string[]): string | null {
  // Long input cannot be a slip of a short name, and comparing it would be slow.
  if (written.length > 80) return null;
  const lower = written.toLowerCase();
  let best: string | null = null;
  let bestDistance = Number.POSITIVE_INFINITY;
  for (const name of valid) {
    // No comparison can come out below the difference in length.
    if (Math.abs(name.length - lower.length) >= bestDistance) continue;
    const apart = distance(lower, name.toLowerCase());
    if (apart < bestDistance) {
      best = name;
      bestDistance = apart;
    }
  }
  const allowed = Math.max(2, Math.floor((best ?? '').length / 3));
  return bestDistance <= allowed ? best : null;
}

/** 'Did you mean …?' when a name is near, otherwise the names there are (at most twelve). */
export function suggest(written: string, valid: readonly string[], what: string): string {
  const near = nearest(written, valid);
  if (near !== null) return `Did you mean '${near}'?`;
  if (valid.length === 0) return `There are no ${what} yet.`;
  const shown = valid.slice(0, 12).join(', ');
  return `Known ${what}: ${shown}${valid.length > 12 ? ' …' : ''}.`;
}
