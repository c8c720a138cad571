/** The lining templates that a kitchen wants: every owned tin on every paper, or what its printables list says. */
import type { Content } from '../domain/content.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import { liningTemplates } from '../views/lining-template.ts';
import type { LiningTemplateView } from '../views/lining-template.types.ts';

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

export interface WantedTemplate {
  view: LiningTemplateView;
  paper: PaperName;
  lang: Locale;
}

/** Tin by tin, on the papers that it is wanted on. */
export function wantedTemplates(content: Content): WantedTemplate[] {
  const papers: readonly PaperName[] = ['A4', 'Letter'];
  return liningTemplates(content).flatMap((view) =>
    papers
      .filter((paper) => isWanted(content, view.id, paper))
      .map((paper) => ({ view, paper, lang: content.kitchen.locale })),
  );
}
