/** The script that is fetched when somebody asks to print. */
import type { Result } from '../domain/result.ts';
import { openPrintShop, type PrintShop, type PrintShopData } from './print-shop.ts';

declare global {
  interface Window {
    tinwrightPrintData?: PrintShopData;
    tinwrightPrintShop?: Result<PrintShop>;
  }
}

if (window.tinwrightPrintData !== undefined)
  window.tinwrightPrintShop = openPrintShop(window.tinwrightPrintData);
