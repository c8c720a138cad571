/** Fetches the print shop's two scripts once. Script tags, because a page from disk may not import or fetch. */
import type { Result } from '../domain/result.ts';
import { loadScript } from './load-script.ts';
import type { PrintShop } from './print-shop.ts';

let opening: Promise<Result<PrintShop>> | undefined;

async function opened(): Promise<Result<PrintShop>> {
  await loadScript('script/print-data.js');
  await loadScript('script/print.js');
  if (window.tinwrightPrintShop === undefined) throw new Error('the print shop did not open');
  return window.tinwrightPrintShop;
}

/** The shop; asks again after a failure, as when the signal was gone. */
export function printShop(): Promise<Result<PrintShop>> {
  opening ??= opened();
  opening.catch(() => {
    opening = undefined;
  });
  return opening;
}
