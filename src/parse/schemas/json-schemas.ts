/** The schemas of content files as JSON Schema, draft 7, so that an editor completes and checks as one types. */
import * as z from 'zod';
import { SCHEMAS } from './all-schemas.ts';

/** Text of each schema file by its name: 'kitchen.schema.json' and so on. */
export function jsonSchemaFiles(): Record<string, string> {
  const files = Object.entries(SCHEMAS).map(([name, schema]) => {
    const json = z.toJSONSchema(schema, { io: 'input', target: 'draft-7' });
    return [`${name}.schema.json`, `${JSON.stringify(json, null, 2)}\n`];
  });
  return Object.fromEntries(files);
}
