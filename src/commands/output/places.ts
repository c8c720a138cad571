/** What lies where in an output folder. Names with a dot are ours and only there while a build runs. */
export const PARTS = ['site', 'print', 'data'] as const;
export type Part = (typeof PARTS)[number];

export const REPORT = 'report.json';
export const README = 'README.md';
export const JOURNAL = '.swap.json';
export const LOCK = '.lock.json';
export const STAGING_PREFIX = '.staging-';
export const ASIDE_PREFIX = '.aside-';

/** Whether a name in an output folder is left over from a build that did not end. */
export function isLeftover(name: string): boolean {
  return (
    name === JOURNAL ||
    name === LOCK ||
    name.startsWith(`${JOURNAL}.`) ||
    name.startsWith(`${LOCK}.`) ||
    name.startsWith(STAGING_PREFIX) ||
    name.startsWith(ASIDE_PREFIX)
  );
}
