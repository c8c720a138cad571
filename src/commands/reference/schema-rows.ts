/** A content file's keys as rows of a table, from its JSON Schema: one row a key, nested ones with their path. */
export interface JsonSchema {
  type?: string;
  description?: string;
  default?: unknown;
  examples?: unknown[];
  enum?: unknown[];
  const?: unknown;
  minimum?: number;
  maximum?: number;
  properties?: Record<string, JsonSchema>;
  required?: string[];
  items?: JsonSchema;
  additionalProperties?: JsonSchema | boolean;
  oneOf?: JsonSchema[];
  anyOf?: JsonSchema[];
}

export interface KeyRow {
  /** 'eggs.size', 'tins[].depth', 'ID.role'. */
  path: string;
  what: string;
  needed: boolean;
  /** What may be written: words to choose from, a range, or an example. */
  write: string;
  usual: string;
  /** In a list of several kinds of entry: the kinds that take this key; empty when all do. */
  kinds: string[];
}

const shown = (value: unknown): string => (typeof value === 'string' ? value : JSON.stringify(value));

function writable(schema: JsonSchema): string {
  const choices = schema.enum ?? schema.items?.enum;
  if (choices !== undefined) return choices.map(shown).join(' · ');
  if (schema.type === 'boolean') return 'true · false';
  const [example] = schema.examples ?? schema.items?.examples ?? [];
  const { minimum, maximum } = schema;
  if (minimum !== undefined && maximum !== undefined) return `${minimum} to ${maximum}`;
  return example === undefined ? '' : `${shown(example)}`;
}

function rowOf(path: string, schema: JsonSchema, needed: boolean): KeyRow {
  const usual = schema.default === undefined ? '' : shown(schema.default);
  return { path, what: schema.description ?? '', needed, write: writable(schema), usual, kinds: [] };
}

/** The key that tells several kinds of entry apart, and each kind's word for itself. */
function kindsOf(options: readonly JsonSchema[]): { key: string; words: string[] } | null {
  const [first] = options;
  const key = Object.entries(first?.properties ?? {}).find(([, one]) => one.const !== undefined)?.[0];
  if (key === undefined) return null;
  return { key, words: options.map(({ properties }) => shown(properties?.[key]?.const)) };
}

/** Rows of several kinds of entry together: keys that all take once, the others with the kinds that take them. */
function rowsOfKinds(path: string, options: readonly JsonSchema[]): KeyRow[] {
  const kinds = kindsOf(options);
  if (kinds === null) return options.flatMap((option) => rowsBelow(path, option));
  const merged = new Map<string, KeyRow>();
  options.forEach((option, at) => {
    const word = kinds.words[at] ?? '';
    for (const row of rowsBelow(path, option)) {
      const known = merged.get(row.path) ?? { ...row, kinds: [] };
      known.kinds.push(word);
      known.needed &&= row.needed;
      merged.set(row.path, known);
    }
  });
  const telling = [path, kinds.key].filter((part) => part !== '').join('.');
  return [...merged.values()].map((row) => {
    const all = row.kinds.length === options.length;
    if (row.path !== telling) return all ? { ...row, kinds: [] } : row;
    return {
      ...row,
      what: 'Which kind it is; the other keys go by it',
      write: row.kinds.join(' · '),
      kinds: [],
    };
  });
}

function rowsBelow(path: string, schema: JsonSchema): KeyRow[] {
  const options = schema.oneOf ?? schema.anyOf;
  if (options !== undefined) return rowsOfKinds(path, options);
  if (schema.items !== undefined) return rowsBelow(`${path}[]`, schema.items);
  if (typeof schema.additionalProperties === 'object')
    return rowsBelow(path === '' ? 'ID' : `${path}.ID`, schema.additionalProperties);
  return Object.entries(schema.properties ?? {}).flatMap(([key, inner]) => {
    const here = path === '' ? key : `${path}.${key}`;
    return [rowOf(here, inner, schema.required?.includes(key) ?? false), ...rowsBelow(here, inner)];
  });
}

/** All keys of a file, in the order of its schema. */
export const schemaRows = (schema: JsonSchema): KeyRow[] => rowsBelow('', schema);
