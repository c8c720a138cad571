/** What a schema found wrong, as problems with file, line, column and advice. */
import type * as z from 'zod';
import type { Problem } from '../../domain/problem.ts';
import { nearest, suggest } from '../nearest.ts';
import { error } from '../problems.ts';
import { orList, quote } from '../quote.ts';
import { exampleAt } from '../schemas/example-at.ts';
import { QUANTITY } from '../schemas/keys.ts';
import { valueAt, type YamlPath, type YamlSource } from './yaml-source.ts';

type Issue = z.core.$ZodIssue;

function found(value: unknown): string {
  if (value === null || value === undefined) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'a group of keys';
  if (typeof value === 'number' && !Number.isFinite(value)) return 'no finite number';
  return typeof value === 'string' ? quote(value) : quote(String(value)).slice(1, -1);
}

const EXPECTED: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list, for example [one, two]',
  object: 'keys with values below it',
  record: 'keys with values below it',
};

/** How a value is named in a message: its key, or the key of the list it is in. */
function called(path: YamlPath): string {
  const last = path[path.length - 1];
  if (last === undefined) return 'The file';
  if (typeof last === 'string') return quote(last);
  const list = path[path.length - 2];
  return list === undefined ? `Item ${last + 1}` : `Item ${last + 1} of ${quote(String(list))}`;
}

function missingKey(path: YamlPath, example: string): Problem {
  const key = String(path[path.length - 1] ?? '');
  const owner = path.length < 2 ? 'The file' : called(path.slice(0, -1));
  return error('key-missing', `${owner} has no ${quote(key)}`, `Add it, for example '${key}: ${example}'.`);
}

function wrongType(
  issue: Issue & { code: 'invalid_type' },
  path: YamlPath,
  value: unknown,
  example: string,
): Problem | null {
  if (value === undefined) return missingKey(path, example);
  const name = called(path);
  if (value === null) {
    return error(
      'value-empty',
      `${name} has nothing after it`,
      'Write its value, or delete the line if it may be left out.',
    );
  }
  // The unit parser reads this number itself and says which unit it lacks.
  if (issue.message === QUANTITY && typeof value === 'number') return null;
  const expected = EXPECTED[issue.expected] ?? 'something else';
  const quotes =
    expected === 'text' && typeof value !== 'object' ? ` Put quotes round it: '${String(value)}'.` : '';
  return error(
    'value-wrong-type',
    `${name} is ${found(value)}; it should be ${expected}`,
    `Write ${expected}.${quotes}`,
  );
}

function notOneOf(path: YamlPath, value: unknown, valid: readonly string[], example: string): Problem {
  if (value === undefined) return missingKey(path, example);
  const near = nearest(String(value), valid);
  const hint = `Use ${orList(valid)}.${near === null ? '' : ` Did you mean '${near}'?`}`;
  return error('value-not-one-of', `${called(path)} is ${found(value)}, which is not known here`, hint);
}

function outOfRange(
  issue: Issue & { code: 'too_small' | 'too_big' },
  path: YamlPath,
  value: unknown,
): Problem {
  const name = called(path);
  if (issue.code === 'too_small' && issue.origin === 'array') {
    return error('value-empty', `${name} is an empty list`, 'Write at least one item.');
  }
  const [most, limit] = issue.code === 'too_big' ? ['most', issue.maximum] : ['least', issue.minimum];
  const what = issue.origin === 'string' ? `${limit} characters` : String(limit);
  const message = `${name} is ${found(value)}; the ${most} is ${what}`;
  return error('value-out-of-range', message, `Use ${what} or ${most === 'most' ? 'less' : 'more'}.`);
}

function unionProblem(
  issue: Issue & { code: 'invalid_union' },
  path: YamlPath,
  value: unknown,
  example: string,
): Problem {
  if ('discriminator' in issue && typeof issue.discriminator === 'string') {
    const known = 'options' in issue && Array.isArray(issue.options) ? issue.options.map(String) : [];
    return notOneOf(path, value, known, example);
  }
  if (value === undefined) return missingKey(path, example);
  if (value === null) {
    return error(
      'value-empty',
      `${called(path)} has nothing after it`,
      'Write its value, or delete the line.',
    );
  }
  return error(
    'value-wrong-type',
    `${called(path)} is ${found(value)}; it should be an amount`,
    'Write it like 250 g.',
  );
}

function unknownKeys(
  issue: Issue & { code: 'unrecognized_keys' },
  path: YamlPath,
  source: YamlSource,
): Problem[] {
  const valid = issue.message.split(' ');
  return issue.keys.map((key) => {
    // { note: flat, pale } reads as a key 'pale' with nothing after it.
    const loose = valueAt(source.value, [...path, key]) === null;
    const comma = loose ? ' Inside { }, a text with a comma needs quotes.' : '';
    const hint = `${suggest(key, valid, 'keys')}${comma}`;
    return {
      ...error('key-unknown', `${quote(key)} is not a key that belongs here`, hint),
      ...source.atKey([...path, key]),
    };
  });
}

function problemOf(issue: Issue, path: YamlPath, value: unknown, example: string): Problem | null {
  switch (issue.code) {
    case 'invalid_type':
      return wrongType(issue, path, value, example);
    case 'invalid_value':
      return notOneOf(path, value, issue.values.map(String), example);
    case 'too_small':
    case 'too_big':
      return outOfRange(issue, path, value);
    case 'invalid_format':
      return error(
        'value-empty',
        `${called(path)} is blank`,
        'Write something, or delete the line if it may be left out.',
      );
    case 'invalid_union':
      return unionProblem(issue, path, value, example);
    default:
      return error(
        'value-wrong-type',
        `${called(path)} is ${found(value)}`,
        "Compare it with the demo kitchen's file.",
      );
  }
}

/** Where one of several forms has the right shape, what is wrong inside it; otherwise that none of them fits. */
function insideUnions(issue: Issue, value: unknown): Issue[] {
  if (issue.code !== 'invalid_union') return [issue];
  const isOutside = (inner: Issue): boolean => inner.path.length === 0 && inner.code === 'invalid_type';
  // A bare number is the unit parser's to judge.
  if (typeof value === 'number' && issue.errors.flat().some(({ message }) => message === QUANTITY)) return [];
  const fitting = issue.errors.find((inner) => !inner.some(isOutside));
  if (fitting === undefined || typeof value !== 'object') return [issue];
  return fitting.map((inner) => ({ ...inner, path: [...issue.path, ...inner.path] }));
}

/** Everything a schema has against a source; bare numbers for quantities are left to the unit parsers. */
export function schemaProblems(source: YamlSource, schema: z.ZodType): Problem[] {
  const checked = schema.safeParse(source.value);
  if (checked.success) return [];
  const issues = checked.error.issues.flatMap((issue) =>
    insideUnions(
      issue,
      valueAt(
        source.value,
        issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step)),
      ),
    ),
  );
  return issues.flatMap((issue): Problem[] => {
    const path = issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step));
    if (issue.code === 'unrecognized_keys') return unknownKeys(issue, path, source);
    const problem = problemOf(
      issue,
      path,
      valueAt(source.value, path),
      exampleAt(schema, path, source.value),
    );
    return problem === null ? [] : [{ ...problem, ...source.at(path) }];
  });
}
