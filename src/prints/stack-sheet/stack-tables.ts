/** The tables of a stack sheet: tiers from the bottom up, and the places of each set of supports. */
import type { StackView, SupportSet } from '../../views/stack-sheet.types.ts';
import type { StackWords } from '../../wording/stacks/index.ts';
import type { SheetLook } from '../order-sheet/look.ts';
import { type Paragraph, paragraph } from '../sheet/lines.ts';
import type { Cell, Column, TableSpec } from '../sheet/table/types.ts';
import { type TypeStyle, typeScale } from '../sheet/type-scale.ts';

function head({ name, unit }: { name: string; unit: string }): Paragraph[] {
  return [
    paragraph(name, typeScale.columnHead),
    ...(unit === '' ? [] : [paragraph(unit, typeScale.columnUnit)]),
  ];
}

const number = (text: string, type: TypeStyle = typeScale.figure): Cell => ({ number: { text, type } });
const said = (text: string): Cell => ({ paragraphs: [paragraph(text, typeScale.figure)] });

/** Bottom first, as it is built. */
export function tierTable({ tiers }: StackView, { table }: StackWords, look: SheetLook): TableSpec {
  const right = (of: { name: string; unit: string }): Column => ({ heading: head(of), align: 'right' });
  return {
    key: 'tiers',
    whole: true,
    paddingMm: look.paddingMm,
    columns: [
      { heading: head(table.tier), align: 'left', narrowestMm: 32 },
      { heading: head(table.coated), align: 'left', narrowestMm: 30, widestMm: 40 },
      right(table.weighs),
      right(table.carries),
      { heading: head(table.standsOn), align: 'left', narrowestMm: 40 },
    ],
    rows: tiers.map(({ name, tin, across, deep, height, weight, carries, standsOnText }) => ({
      cells: [
        {
          heading: true,
          paragraphs: [paragraph(name, typeScale.rowName), paragraph(tin.name, typeScale.rowDetail)],
        },
        said(
          [...(across.text === deep.text ? [across.text] : [across.text, deep.text]), height.text].join(
            ' × ',
          ),
        ),
        number(weight.text, look.strong),
        carries === null ? said('–') : number(carries.text),
        { paragraphs: [paragraph(standsOnText, typeScale.rowNote)] },
      ],
    })),
  };
}

/** One row a support. */
export function placeTable({ id, spots }: SupportSet, { table }: StackWords, look: SheetLook): TableSpec {
  const columns = [table.number, table.clock, table.middle, table.side, table.depth, table.edge];
  return {
    key: `places-${id}`,
    whole: true,
    paddingMm: look.paddingMm * 0.4,
    columns: columns.map((of, at) => ({
      heading: head(of),
      align: at === 0 ? 'left' : 'right',
      narrowestMm: 20,
    })),
    rows: spots.map(({ number: no, clock, fromMiddle, side, depth, fromEdge }) => ({
      cells: [
        { heading: true, paragraphs: [paragraph(no.text, typeScale.rowName)] },
        number(clock.text, look.strong),
        number(fromMiddle.text, look.strong),
        said(side.text),
        said(depth.text),
        number(fromEdge.text),
      ],
    })),
  };
}
