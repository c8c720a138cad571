/**
 * A surface for imposed and several-up sheets: what a page says stays, its own structure, links and bookmarks do
 * not, because the reading-order file carries them. Each page becomes one paragraph of one section.
 */
import type { Surface } from '../sheet/surface.ts';

function withoutStructure(surface: Surface): Surface {
  return {
    text: (run) => surface.text(run),
    path: (steps, paint) => surface.path(steps, paint),
    within: (_tag, _options, body) => body(),
    artifact: (body) => surface.artifact(body),
    clip: (box, body) => surface.clip(box, body),
    link: (_box, _target, _description, body) => body(),
    anchor: () => undefined,
    bookmark: () => undefined,
  };
}

/** Draws `body` as one paragraph; `key` is the page's own. */
export function asOneParagraph(surface: Surface, key: string, body: (plain: Surface) => void): void {
  surface.within('Sect', { key }, () => surface.within('P', {}, () => body(withoutStructure(surface))));
}
