/** Writes schemas/REFERENCE.md: part of `npm run schemas`. */
import { writeFileSync } from 'node:fs';
import { referenceText } from './reference.ts';

writeFileSync('schemas/REFERENCE.md', referenceText());
