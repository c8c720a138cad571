/** The demo kitchen's templates as prints, layouts and bytes. */
import type { PaperName } from '../../../../src/domain/kitchen.ts';
import type { Tin } from '../../../../src/domain/tin.ts';
import { liningTemplatePrint } from '../../../../src/prints/lining-template.ts';
import { sheetContext } from '../../../../src/prints/sheet/sheet-context.ts';
import type { Print } from '../../../../src/prints/sheet/surface.ts';
import { type TemplateLayout, templateLayout } from '../../../../src/prints/templates/lay-out.ts';
import { liningTemplateView } from '../../../../src/views/lining-template.ts';
import type { LiningTemplateView } from '../../../../src/views/lining-template.types.ts';
import { templateLabelsFor } from '../../../../src/wording/lining-template/sheet-words.ts';
import { readDemo } from '../../../samples/demo.ts';
import { sampleFonts } from '../../../samples/fonts.ts';

export interface TemplateCase {
  name: string;
  tin: Tin;
  paper: PaperName;
  view: LiningTemplateView;
  layout: TemplateLayout;
  print: Print;
  /** Pages of words before the patterns. */
  wordPages: number;
}

/** Every owned tin of the demo kitchen on A4 and Letter. */
export async function demoTemplates() {
  const { content, problems } = await readDemo();
  if (content === null) throw new Error(JSON.stringify(problems));
  const fonts = sampleFonts();
  const { kitchen, houseStyle } = content;
  const context = sheetContext(houseStyle, fonts.metrics);
  const cases = kitchen.tins.flatMap((tin) => {
    const view = liningTemplateView(tin, content);
    return (['A4', 'Letter'] as const).map((paper): TemplateCase => {
      const layout = templateLayout(view, paper, templateLabelsFor(kitchen.locale), context);
      const print = liningTemplatePrint(view, houseStyle, fonts.metrics, paper, kitchen.locale);
      const wordPages = print.pages.length - layout.sheets.length;
      return { name: `${tin.id} on ${paper}`, tin, paper, view, layout, print, wordPages };
    });
  });
  return { content, fonts, cases };
}
