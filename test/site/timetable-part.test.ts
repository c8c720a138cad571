/** The timetable and the oven plan as parts of a page: sound HTML that says what the view says. */
import { HtmlValidate } from 'html-validate';
import nunjucks from 'nunjucks';
import { describe, expect, it } from 'vitest';
import { timetablePart } from '../../src/site/timetable-part.ts';
import { sampleTimetable } from '../samples/timetable.ts';

const view = sampleTimetable();
const templates = nunjucks.configure('templates/parts', { autoescape: true });
const html = templates.renderString(
  '<!doctype html>\n<html lang="en-GB"><head><title>Week</title></head><body><main><h1>Week</h1><h2>Days</h2>{% include "timetable.njk" %}<h2>Oven</h2>{% include "oven-plan.njk" %}</main></body></html>\n',
  { timetable: timetablePart(view, 'en-GB') },
);

describe('the parts of a page', () => {
  it('are valid HTML', async () => {
    const report = await new HtmlValidate({
      extends: ['html-validate:standard', 'html-validate:a11y'],
    }).validateString(html);
    expect(
      report.results.flatMap(({ messages }) =>
        messages.map(({ ruleId, message }) => `${ruleId}: ${message}`),
      ),
    ).toEqual([]);
  });

  it('say every line and draw every tin', () => {
    for (const { what, notes } of view.days.flatMap((day) => day.rows))
      for (const words of [what, ...notes]) expect(html).toContain(words);
    const tins = view.ovenPlan.loads.flatMap(({ looks }) => looks);
    expect(html.match(/class="wash"/g)).toHaveLength(tins.length);
    expect(html.match(/role="img"/g)).toHaveLength(
      view.days.length + view.ovenPlan.loads.flatMap(({ shelves }) => shelves).length,
    );
  });

  it('draw every shelf to its own measures, door in front', () => {
    const shelves = html.match(/<svg viewBox="-4 -4 448 398"/g);
    expect(shelves).toHaveLength(view.ovenPlan.loads.flatMap((load) => load.shelves).length);
    expect(html.match(/<path class="shelf-door" d="M0 365H440"/g)).toHaveLength(shelves?.length ?? 0);
  });
});
