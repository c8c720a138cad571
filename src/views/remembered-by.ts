/** Answers that are worked out once for all who ask with the very same parts of a content. */
import type { Content } from '../domain/content.ts';

/** Contents that were narrowed for a print ask in between. */
const MOST_KEPT = 4;

/** `make` sees no other parts than those that are compared. */
export function rememberedBy<Part extends keyof Content, Answer>(
  parts: readonly Part[],
  make: (content: Pick<Content, Part>) => Answer,
): (content: Pick<Content, Part>) => Answer {
  let known: { own: unknown[]; answer: Answer }[] = [];
  return (content) => {
    const own = parts.map((part) => content[part]);
    const found = known.find((one) => one.own.every((value, at) => value === own[at]));
    if (found !== undefined) return found.answer;
    const answer = make(content);
    known = [{ own, answer }, ...known].slice(0, MOST_KEPT);
    return answer;
  };
}
