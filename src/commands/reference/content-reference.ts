/** Every content file, key by key, from the schemas that read them. */
import { type LogColumn, NEEDED, OPTIONAL } from '../../parse/bake-log-table.ts';
import { jsonSchemaFiles } from '../../parse/schemas/json-schemas.ts';
import { asCode, markdownTable } from './markdown-table.ts';
import { type JsonSchema, type KeyRow, schemaRows } from './schema-rows.ts';

const FILES: readonly { schema: string; file: string; about: string }[] = [
  {
    schema: 'kitchen',
    file: 'kitchen.yaml',
    about: 'The kitchen: its tins, eggs, ovens, mixer, paper and hours.',
  },
  {
    schema: 'ingredients',
    file: 'ingredients.yaml',
    about: 'What is on the shelf. ID is a short name of your own.',
  },
  {
    schema: 'recipe',
    file: 'recipes/ID.md',
    about: 'Between two lines of ---; the method follows in Markdown.',
  },
  { schema: 'flavour', file: 'flavours/ID.yaml', about: 'Ordered changes to a recipe’s formula.' },
  { schema: 'finish', file: 'finishes/ID.yaml', about: 'A filling or a coating.' },
  { schema: 'order', file: 'orders/ID.yaml', about: 'What one customer gets.' },
  { schema: 'page', file: 'pages/ID.md', about: 'A free page: the text follows in Markdown.' },
  {
    schema: 'house-style',
    file: 'house-style.yaml and house-styles/ID.yaml',
    about: 'Colours, typefaces and margins of pages and prints.',
  },
];

const LOG: Record<LogColumn, [what: string, example: string]> = {
  date: ['Day of the bake', '2026-02-07'],
  recipe: ['A recipe', 'vanilla-equal-weights'],
  tin: ['A tin of this kitchen', 'round-8'],
  batter: ['Batter that went into one tin', '900 g'],
  oven: ['What the dial was set to', '140C fan'],
  minutes: ['From the door closing to the done test', '53 min'],
  flavours: ['Flavours, with spaces between them', 'orange'],
  count: ['How many such tins baked together; 1 when empty', '2'],
  done_by: ['The done test, or the probe and its reading', 'probe 95C'],
  which_oven: ['An oven, where there are several', 'small-oven'],
  batter_temperature: ['Where it was not the kitchen’s usual', '18C'],
  core: ['none, hollow or solid', 'none'],
  band: ['Whether an insulated band was round it', 'no'],
  height: ['Height of the cold cake', '65 mm'],
  mass_out: ['Weight of one cold cake', '805 g'],
  notes: ['Anything worth keeping', 'Level'],
};

function what({ what: text, kinds }: KeyRow): string {
  return kinds.length === 0 ? text : `${text} (for ${kinds.join(', ')})`;
}

function tableOf(name: string, schemas: Readonly<Record<string, string>>): string {
  const schema = JSON.parse(schemas[`${name}.schema.json`] ?? '{}') as JsonSchema;
  const rows = schemaRows(schema).map((row) => [
    asCode(row.path),
    what(row),
    row.needed ? 'yes' : '',
    asCode(row.write),
    asCode(row.usual),
  ]);
  return markdownTable(['key', 'what', 'needed', 'write', 'when left out'], rows);
}

function logTable(): string {
  const rowOf = (column: LogColumn, needed: string): string[] => {
    const [text, example] = LOG[column];
    return [asCode(column), text, needed, asCode(example)];
  };
  const rows = [
    ...NEEDED.map((column) => rowOf(column, 'yes')),
    ...OPTIONAL.map((column) => rowOf(column, '')),
  ];
  return markdownTable(['column', 'what', 'needed', 'write'], rows);
}

/** The part of the reference about content files, in Markdown. */
export function contentReference(): string {
  const schemas = jsonSchemaFiles();
  const sections = FILES.map(
    ({ schema, file, about }) => `### ${file}\n${about}\n\n${tableOf(schema, schemas)}`,
  );
  return [
    '## Content files',
    'Paths are below the content folder. `a.b` is the key `b` below `a`; `a[]` is each entry of a list. Every length, weight, volume, temperature and time carries its unit.',
    ...sections,
    `### bake-log.csv\nA row a bake; the first row names the columns, in any order.\n\n${logTable()}`,
    '### stock.csv\nWhat is on the shelf: the columns `ingredient` and `on hand`, as in `caster-sugar,1.2 kg`; eggs by count, as in `egg,18`.',
    '### outlines/ID.svg\nA tin drawn from above in millimetres: closed paths, with holes if need be. A tin in kitchen.yaml names it by `outline: ID`.',
  ].join('\n\n');
}
