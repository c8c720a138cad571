/** The rows of a chart's page, read from its HTML: what each cell says, and the value it sorts by. */
export interface PageCell {
  value: string | null;
  /** The cell's own text and its small print, apart. */
  parts: string[];
}

export interface PageRow {
  heading: string;
  cells: Map<string, PageCell>;
}

const ENTITIES: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };

/** Text without tags and drawings, entities resolved. */
export function plainText(html: string): string {
  return html
    .replace(/<svg[\s\S]*?<\/svg>/g, '')
    .replace(/<[^>]+>/g, ' ')
    .replace(/&(amp|lt|gt|quot|#39);/g, (_, name: string) => ENTITIES[name] ?? '')
    .replace(/\s+/g, ' ')
    .trim();
}

function cellOf(attributes: string, html: string): [string, PageCell] {
  const attribute = (name: string): string | null =>
    new RegExp(`\\b${name}="([^"]*)"`).exec(attributes)?.[1] ?? null;
  const parts = html.split(/(?=<small>)/).map(plainText);
  return [plainText(attribute('data-label') ?? ''), { value: attribute('data-value'), parts }];
}

/** Rows of the chart by their anchors. */
export function chartPageRows(html: string): Map<string, PageRow> {
  const rows = [...html.matchAll(/<tr id="([^"]+)">([\s\S]*?)<\/tr>/g)];
  return new Map(
    rows.map(([, id = '', row = '']) => {
      const heading = plainText(/<th[\s\S]*?<\/th>/.exec(row)?.[0] ?? '');
      const cells = [...row.matchAll(/<td([^>]*)>([\s\S]*?)<\/td>/g)];
      return [
        id,
        {
          heading,
          cells: new Map(cells.map(([, attributes = '', inner = '']) => cellOf(attributes, inner))),
        },
      ];
    }),
  );
}
