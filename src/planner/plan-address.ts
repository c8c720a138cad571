/**
 * The page's address follows the plan a moment behind it: a browser takes longer to write an address than the answer
 * takes, and taps come in rows. What leaves the page (another page, a message, a device put away) has it written first.
 */
const BEHIND_MS = 150;

let due: ReturnType<typeof setTimeout> | null = null;
let hash = '';

/** Forgets what is still to be written: somebody opened another plan. */
export function dropAddress(): void {
  if (due !== null) clearTimeout(due);
  due = null;
}

/** Writes what is still to be written, without a step in the way back. */
export function writeAddress(): void {
  if (due === null) return;
  dropAddress();
  history.replaceState(null, '', hash);
}

/** Has it written within a moment, once for all changes till then. */
export function addressSoon(next: string): void {
  hash = next;
  due ??= setTimeout(writeAddress, BEHIND_MS);
}

/** Until what it returns is called, nobody leaves the page before its address is written. */
export function writeOnLeaving(): () => void {
  const leaving = ['beforeunload', 'pagehide', 'blur'];
  for (const one of leaving) addEventListener(one, writeAddress);
  document.addEventListener('visibilitychange', writeAddress);
  return () => {
    for (const one of leaving) removeEventListener(one, writeAddress);
    document.removeEventListener('visibilitychange', writeAddress);
  };
}
