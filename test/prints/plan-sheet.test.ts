/** The sheet of a plan: sound on both papers, every weight and pour of the plan on it, in grams and in ounces. */
import { beforeAll, describe, expect, it } from 'vitest';
import type { Content } from '../../src/domain/content.ts';
import type { LoadedFonts } from '../../src/pdf/fonts.ts';
import { planAnswer } from '../../src/planner/answer.ts';
import { planFrom } from '../../src/planner/plan-state.ts';
import { planSheetPrint } from '../../src/prints/plan-sheet.ts';
import { readContent } from '../../src/read/content.ts';
import type { PlanView } from '../../src/views/plan.types.ts';
import { plannerContent } from '../../src/views/planner-content.ts';
import { pageContents, rawObjects } from '../reading-back/raw-objects.ts';
import { readPdf } from '../reading-back/read-pdf.ts';
import { tableRows } from '../reading-back/structure.ts';
import { sampleFonts } from '../samples/fonts.ts';
import { sampleStyle } from '../samples/house-style.ts';
import { printed } from '../samples/printed.ts';
import { sheetFaults, unmarkedPainting } from './sheet-checks.ts';

const PLANS = [
  'recipe=vanilla-equal-weights&tins=2+x+round-4%2C+2+x+round-6',
  'recipe=vanilla-equal-weights&tins=2+x+round-12%2C+1+x+square-8%2C+1+x+beehive&finishes=vanilla-buttercream--filling%2Csugarpaste--rolled',
  'recipe=vanilla-oil-no-egg&tins=1+x+round-8&mass=oz',
];

let fonts: LoadedFonts;
let demo: Content;

beforeAll(async () => {
  fonts = sampleFonts();
  const { content } = await readContent('content');
  if (content === null) throw new Error('the demo content is wrong');
  demo = content;
});

function viewOf(address: string): PlanView {
  const answer = planAnswer(planFrom(address), plannerContent(demo));
  if (!answer?.ok) throw new Error(`no plan for ${address}`);
  return answer.value.view;
}

const plain = (text: string): string => text.replace(/\s+/g, ' ').trim();

describe.each(PLANS)('the sheet of %s', (address) => {
  it('stands within its margins and says every weight, pour and time of the plan', async () => {
    const view = viewOf(address);
    const mass = planFrom(address).mass;
    const { name: kitchenName, edition } = demo.kitchen;
    const options = { kitchenName, edition, mass, address, siteUrl: 'https://example.org' };
    for (const paper of ['A4', 'Letter'] as const) {
      const bytes = printed(planSheetPrint(view, sampleStyle, fonts.metrics, paper, 'en-GB', options), fonts);
      const pdf = await readPdf(bytes);
      expect(sheetFaults(pdf, sampleStyle.marginMm)).toEqual([]);
      expect(pageContents(rawObjects(bytes)).flatMap(unmarkedPainting)).toEqual([]);
      const rows = tableRows(pdf).map((cells) => plain(cells.map(({ text }) => text).join(' ')));
      for (const load of view.loads)
        for (const [at, { name }] of view.columns.entries()) {
          const weight = load.amounts[at]?.figure.text ?? '?';
          expect(
            rows.some((row) => row.includes(`${weight} ${name}`)),
            `${weight} ${name}`,
          ).toBe(true);
        }
      for (const { name, receives, bake } of view.tins) {
        const row = rows.find((one) => one.includes(name)) ?? '';
        expect(row).toContain(receives.text);
        if (bake !== null) expect(row).toContain(plain(bake.expectedBy.text));
      }
      const all = plain(pdf.pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' '));
      for (const { finish, make } of view.finishes) {
        const row = rows.find((one) => one.includes(finish.name)) ?? '';
        expect(row).toContain(make.text);
      }
      for (const { text } of view.cautions)
        expect(all.replaceAll(' ', '')).toContain(text.replace(/\s/g, ''));
    }
  });
});
