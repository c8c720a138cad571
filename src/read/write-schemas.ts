/** Writes the JSON Schemas of content files into schemas/: `npm run schemas` after a change to src/parse/schemas. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { jsonSchemaFiles } from '../parse/schemas/json-schemas.ts';

mkdirSync('schemas', { recursive: true });
for (const [name, text] of Object.entries(jsonSchemaFiles())) writeFileSync(`schemas/${name}`, text);
