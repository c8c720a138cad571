import { describe, expect, it } from 'vitest';
import { filesByOrder, filesOfOrder } from '../../src/views/downloads.ts';

const named = (path: string) => ({ path, byteCount: 1 });

describe('files by order', () => {
  it('hold for each order what is found among all files, also where one id begins another', () => {
    const files = [
      ...[
        'order-1-order-sheet-a4',
        'order-1-day-sheet-letter',
        'order-10-order-sheet-a4',
        'order-1-b-quote-a4',
      ].map((name) => named(`print/orders/${name}.pdf`)),
      ...['order-1.csv', 'order-1.ics', 'order-1-timetable.json', 'order-10.csv'].map((name) =>
        named(`data/orders/${name}`),
      ),
      named('print/labels/orders/order-1-full-80x70-a4.pdf'),
      named('print/weeks/2026-w43-week-sheet-a4.pdf'),
      named('print/tin-charts/order-1-a4.pdf'),
    ];
    const ids = ['order-1', 'order-10', 'order-1-b', '2026-W43', 'order-2'];
    const byOrder = filesByOrder(ids, files);
    for (const id of ids)
      expect(filesOfOrder(id, byOrder.get(id.toLowerCase()) ?? [])).toEqual(filesOfOrder(id, files));
    expect(filesOfOrder('order-1', files).flatMap(({ files: own }) => own)).toHaveLength(6);
    expect(byOrder.get('order-2')).toEqual([]);
  });
});
