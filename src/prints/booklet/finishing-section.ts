/** Fillings and coatings: amounts for the cake from every tin, what each finish is made of, and the cautions. */
import type { BookletFinish, BookletFinishing, BookletTable } from '../../views/booklet/booklet.types.ts';
import { heading, list, textParagraph } from '../sheet/blocks.ts';
import type { Section } from '../sheet/flow.ts';
import { paragraph } from '../sheet/lines.ts';
import { cautionBlock, methodBlocks } from '../sheet/method-blocks.ts';
import type { Block } from '../sheet/strip.ts';
import { keptWithNext } from './block-wraps.ts';
import { bookletType, methodLook } from './booklet-type.ts';
import type { SectionParts } from './recipe-section.ts';
import { tableBlocks } from './reference-section.ts';

function finishBlocks(finish: BookletFinish, { words }: SectionParts): Block[] {
  const { name, anchor, partsText, keepsText, method, cautions } = finish;
  const look = { ...methodLook, gapMm: 1 };
  return [
    keptWithNext(
      heading(name, { level: 3, type: bookletType.heading, anchor, spaceMm: 4 }),
      textParagraph(`${anchor} parts`, paragraph(`${partsText} ${keepsText}`, bookletType.body), 0.3),
    ),
    ...methodBlocks(anchor, method, look),
    ...cautions.map(({ code, text }) =>
      cautionBlock(`${anchor} ${code}`, words.caution, text, { ...look, body: bookletType.small }),
    ),
  ];
}

/** A table, then what the finishes that it tells first are made of. */
function tableSection(view: BookletTable, finishing: BookletFinishing, parts: SectionParts): Section {
  const made = finishing.finishes.filter(({ tableId }) => tableId === view.id);
  return {
    key: `finishing-${view.id}`,
    blocks: [...tableBlocks(view, parts), ...made.flatMap((finish) => finishBlocks(finish, parts))],
  };
}

/** The part's sections; none while the kitchen has no finishes. */
export function finishingSections(finishing: BookletFinishing | null, parts: SectionParts): Section[] {
  if (finishing === null) return [];
  const { words } = parts;
  const { heading: title, notes } = words.finishing;
  const look = { ...methodLook, gapMm: 1.5 };
  const settings = `${finishing.settings.map(({ label, text }) => `${label}: ${text}`).join('. ')}.`;
  const opening: Section = {
    key: 'finishing',
    startsPage: true,
    blocks: [
      heading(title, { level: 1, type: bookletType.part, bookmark: title, anchor: 'finishing' }),
      textParagraph('summary', paragraph(finishing.summary, bookletType.lead), 0.5),
      textParagraph('settings', paragraph(settings, bookletType.body)),
      ...finishing.warnings.map((text, index) => cautionBlock(`warning ${index}`, words.check, text, look)),
      ...finishing.cautions.map(({ code, text }) => cautionBlock(code, words.caution, text, look)),
      heading(notes, { level: 2, type: bookletType.title, spaceMm: 6, bookmark: notes }),
      list('notes', [...finishing.notes, ...finishing.leftOut], bookletType.body),
    ],
  };
  return [opening, ...finishing.tables.map((view) => tableSection(view, finishing, parts))];
}
