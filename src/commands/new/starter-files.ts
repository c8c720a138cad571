/** The files of a new kitchen: the answers as kitchen.yaml, the rest as it lies in the package’s templates/starter/. */
import { readFileSync } from 'node:fs';
import { relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { MadeFile } from '../make/made-file.ts';
import type { KitchenAnswers } from './answers.ts';
import { kitchenYaml } from './kitchen-yaml.ts';

const PACKAGE = new URL('../../../', import.meta.url);

const starter = (path: string): string => readFileSync(new URL(`templates/starter/${path}`, PACKAGE), 'utf8');

/** The line by which an editor finds a schema: from the file's own folder, so that a kitchen can move with its folder. */
function schemaLine(folder: string, schema: string): string {
  const from = relative(folder, fileURLToPath(new URL(`schemas/${schema}.schema.json`, PACKAGE)));
  return `# yaml-language-server: $schema=${from.split(sep).join('/')}\n`;
}

/** `folder` is where the kitchen will stand (an absolute path), `edition` an ISO date. */
export function starterFiles(folder: string, answers: KitchenAnswers, edition: string): MadeFile[] {
  const { locale, recipe } = answers;
  const recipeText = starter(`${locale}/recipes/${recipe}.md`);
  const recipeSchema = schemaLine(`${folder}/recipes`, 'recipe');
  return [
    { path: 'kitchen.yaml', bytes: schemaLine(folder, 'kitchen') + kitchenYaml(answers, edition) },
    {
      path: 'ingredients.yaml',
      bytes: schemaLine(folder, 'ingredients') + starter(`${locale}/ingredients.yaml`),
    },
    // A recipe's keys stand between its first two lines '---'.
    { path: `recipes/${recipe}.md`, bytes: recipeText.replace('---\n', `---\n${recipeSchema}`) },
    { path: 'house-style.yaml', bytes: schemaLine(folder, 'house-style') + starter('house-style.yaml') },
    { path: 'bake-log.csv', bytes: starter('bake-log.csv') },
    { path: 'pages/about.md', bytes: starter(`${locale}/pages/about.md`) },
  ];
}
