/**
 * The planner's scripts: its code in one classic script, and the kitchen's content in another, so that both also
 * run from disk. The code is bundled from the very modules that the build computes with.
 */
import type { Content } from '../domain/content.ts';
import type { FontRole, HouseStyle } from '../domain/house-style.ts';
import { orderHouse, plannerContent, plannerMethods } from '../views/planner-content.ts';
import { bundleOf } from './bundles.ts';
import { publicKitchenText } from './kitchen-text.ts';
import type { Asset } from './site-assets.ts';

export const PLANNER_SCRIPT = 'script/planner.js';
export const PLANNER_DATA = 'script/planner-data.js';
const PRINT_SCRIPT = 'script/print.js';
const READER_SCRIPT = 'script/kitchen.js';
const WORKING_SCRIPT = 'script/working.js';
const METHODS = 'script/methods.js';
const KITCHEN_TEXT = 'script/kitchen-text.js';
const PRINT_DATA = 'script/print-data.js';

/** A script may hold any text, but no tag that would end it, and no line end that old engines refuse. */
const scriptJson = (value: unknown): string =>
  JSON.stringify(value).replace(
    /[<\u2028\u2029]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );

/** What the print shop needs of the house beside the content. */
export interface PrintHouse {
  style: HouseStyle;
  /** Font files that can be embedded. */
  fonts: Record<FontRole, { name: string; bytes: Uint8Array }>;
  producer: string;
}

function printData({ style, fonts, producer }: PrintHouse, content: Content): unknown {
  const font = (role: FontRole) => ({
    name: fonts[role].name,
    base64: Buffer.from(fonts[role].bytes).toString('base64'),
  });
  const all = {
    text: font('text'),
    textBold: font('textBold'),
    textItalic: font('textItalic'),
    heading: font('heading'),
  };
  return { style, producer, fonts: all, house: orderHouse(content) };
}

/** The planner's two scripts, and those that are fetched when somebody asks for more; `kitchenYaml` as the baker wrote it. */
export async function plannerAssets(
  content: Content,
  house: PrintHouse,
  kitchenYaml: string,
): Promise<Asset[]> {
  const kitchenText = publicKitchenText(kitchenYaml, content);
  const [planner, print, reader, working] = await Promise.all(
    ['main', 'print-main', 'kitchen-reader', 'working-main'].map(bundleOf),
  );
  return [
    { path: PLANNER_SCRIPT, bytes: planner ?? '' },
    { path: PLANNER_DATA, bytes: `window.tinwrightContent=${scriptJson(plannerContent(content))};\n` },
    { path: METHODS, bytes: `window.tinwrightMethods=${scriptJson(plannerMethods(content))};\n` },
    { path: PRINT_SCRIPT, bytes: print ?? '' },
    { path: READER_SCRIPT, bytes: reader ?? '' },
    { path: KITCHEN_TEXT, bytes: `window.tinwrightKitchenText=${scriptJson(kitchenText)};\n` },
    { path: WORKING_SCRIPT, bytes: working ?? '' },
    { path: PRINT_DATA, bytes: `window.tinwrightPrintData=${scriptJson(printData(house, content))};\n` },
  ];
}
