import { describe, expect, it } from 'vitest';
import { keptBack } from '../../../src/compute/labels/kept-back.ts';
import { labelWordsFor } from '../../../src/wording/label/index.ts';
import { orderWordsFor } from '../../../src/wording/orders/index.ts';

// Common practice, no source: frozen on the day, eaten within three months.
describe('a top tier that is kept back', () => {
  it('is frozen on the day of the hand-over and eaten within three months', () => {
    const frozen = (freezeOn: string, eatBy: string) => ({ how: 'frozen', freezeOn, eatBy });
    expect(keptBack('2026-11-28', 4, ['buttercream', 'sugarpaste'])).toEqual(
      frozen('2026-11-28', '2027-02-28'),
    );
    expect(keptBack('2026-09-30', 4, [])).toEqual(frozen('2026-09-30', '2026-12-28'));
    expect(keptBack('2026-11-30', 2, [])).toEqual(frozen('2026-11-30', '2027-02-28'));
    expect(keptBack('2026-06-07', 4, [])).toEqual(frozen('2026-06-07', '2026-09-07'));
  });

  it('stays as it is where it keeps four weeks, and is not kept with fresh cream or curd', () => {
    expect(keptBack('2026-11-28', 90, ['marzipan'])).toEqual({ how: 'unfrozen' });
    expect(keptBack('2026-11-28', 90, ['marzipan', 'cream'])).toEqual({ how: 'not kept' });
    expect(keptBack('2026-11-28', 4, ['curd'])).toEqual({ how: 'not kept' });
  });

  it('is told with both days on label and sheet', () => {
    const label = labelWordsFor('en-GB').kept('28 November 2026', '28 February 2027');
    expect(label).toMatch(/28 November 2026.*28 February 2027/);
    const told = orderWordsFor('en-GB').cautions.kept;
    expect(told.frozen('28 November 2026', '28 February 2027')).toMatch(/28 November 2026.*28 February 2027/);
    const american = orderWordsFor('en-US').cautions.kept.frozen('November 28, 2026', 'February 28, 2027');
    expect(american).toContain('wrap it in plastic wrap twice and foil');
    expect(told.asItIs).toContain('label');
    expect(told.notKept).toMatch(/cream or curd/);
  });
});
