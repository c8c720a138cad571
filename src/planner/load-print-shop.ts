/** Fetches the print shop's two scripts once. Script tags, because a page from disk may not import or fetch. */
import type { Result } from '../domain/result.ts';
import type { PrintShop } from './print-shop.ts';

let opening: Promise<Result<PrintShop>> | undefined;

function script(address: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const tag = document.createElement('script');
    tag.src = address;
    tag.onload = () => resolve();
    tag.onerror = () => reject(new Error(`${address} did not load`));
    document.head.append(tag);
  });
}

async function opened(): Promise<Result<PrintShop>> {
  await script('script/print-data.js');
  await script('script/print.js');
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
