/** The lining templates that a kitchen wants: every owned tin on every paper, or what its printables list says. */
import type { Content } from '../domain/content.ts';
import type { PaperName } from '../domain/kitchen.ts';
import { liningTemplates } from '../views/lining-template.ts';
import { liningTemplatePrint } from './lining-template.ts';
import type { Metrics, Print } from './sheet/surface.ts';

/** Whether some entry of the list asks for this tin on this paper; without a list everything is asked for. */
function isWanted({ kitchen, printables }: Content, tinId: string, paper: PaperName): boolean {
  if (printables === null) return kitchen.paper.includes(paper);
  return printables.some(
    ({ print, tinIds, papers }) =>
      print === 'lining-template' &&
      (tinIds?.includes(tinId) ?? true) &&
      (papers ?? kitchen.paper).includes(paper),
  );
}

export function templatePrints(content: Content, metrics: Metrics): Print[] {
  const { kitchen, houseStyle } = content;
  const papers: readonly PaperName[] = ['A4', 'Letter'];
  return liningTemplates(content).flatMap((view) =>
    papers
      .filter((paper) => isWanted(content, view.id, paper))
      .map((paper) => liningTemplatePrint(view, houseStyle, metrics, paper, kitchen.locale)),
  );
}
