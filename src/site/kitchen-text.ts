/**
 * Which sections of its kitchen.yaml does a site hand on, for a kitchen.yaml saved on a device to be whole? What work
 * costs, and which customers' orders are printed, stay at home unless the kitchen publishes its orders; so do comments,
 * which are the baker's own notes.
 */
import type { Content } from '../domain/content.ts';
import { type KitchenText, kitchenSections } from '../parse/kitchen-sections.ts';

/** The sections that may be published. `written` is the text of a sound kitchen.yaml. */
export function publicKitchenText(
  written: string,
  { publishesOrders }: Pick<Content, 'publishesOrders'>,
): KitchenText {
  const sections = kitchenSections(written, { withoutComments: !publishesOrders });
  if (publishesOrders) return { sections, leftOut: [], withoutComments: false };
  const isPrivate = ({ key, text }: { key: string; text: string }): boolean =>
    key === 'costs' || (key === 'printables' && /\borders\b/.test(text));
  return {
    sections: sections.filter((section) => !isPrivate(section)),
    leftOut: sections.filter(isPrivate).map(({ key }) => key),
    withoutComments: true,
  };
}
