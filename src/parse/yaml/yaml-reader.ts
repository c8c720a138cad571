/**
 * Takes values out of a YAML source one by one and collects what is wrong with them, each at its place, so that
 * one mistake does not hide the next. What has the wrong type is undefined here: the schema has already said so.
 */
import type * as z from 'zod';
import type { Problem } from '../../domain/problem.ts';
import type { Result } from '../../domain/result.ts';
import { locate } from '../problems.ts';
import { schemaProblems } from './schema-problems.ts';
import { valueAt, type YamlPath, type YamlSource } from './yaml-source.ts';

export interface YamlReader {
  source: YamlSource;
  problems: Problem[];
  text(...path: YamlPath): string | undefined;
  number(...path: YamlPath): number | undefined;
  truth(...path: YamlPath): boolean | undefined;
  /** Texts of a list. */
  texts(...path: YamlPath): string[] | undefined;
  /** How many items a list has. */
  items(...path: YamlPath): number;
  /** Keys of a group in the order written. */
  keys(...path: YamlPath): string[];
  has(...path: YamlPath): boolean;
  /** One of some words; anything else is undefined. */
  word<W extends string>(words: readonly W[], ...path: YamlPath): W | undefined;
  /** A text (or a bare number) read by a parser, whose problems are kept with their place. */
  parsed<T>(parse: (text: string) => Result<T>, ...path: YamlPath): T | undefined;
  /** Keeps a problem about the value at a path. */
  report(problem: Problem, ...path: YamlPath): void;
  /** Keeps a problem about the key at a path. */
  reportKey(problem: Problem, ...path: YamlPath): void;
}

function isGroup(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A reader of a source that its schema has already gone over. */
export function yamlReader(source: YamlSource, schema: z.ZodType): YamlReader {
  const problems = schemaProblems(source, schema);
  const get = (path: YamlPath): unknown => valueAt(source.value, path);
  const keep = (problem: Problem, path: YamlPath): void => {
    const { column, ...whole } = problem;
    const start = column === undefined || column === 1 ? null : source.atText(path);
    problems.push(start === null ? locate(whole, source.at(path)) : locate(problem, start));
  };
  const text = (...path: YamlPath): string | undefined => {
    const value = get(path);
    return typeof value === 'string' ? value : undefined;
  };
  return {
    source,
    problems,
    text,
    number: (...path) => {
      const value = get(path);
      return typeof value === 'number' ? value : undefined;
    },
    truth: (...path) => {
      const value = get(path);
      return typeof value === 'boolean' ? value : undefined;
    },
    texts: (...path) => {
      const value = get(path);
      return Array.isArray(value) ? value.filter((item) => typeof item === 'string') : undefined;
    },
    items: (...path) => {
      const value = get(path);
      return Array.isArray(value) ? value.length : 0;
    },
    keys: (...path) => {
      const value = get(path);
      return isGroup(value) ? Object.keys(value) : [];
    },
    has: (...path) => get(path) !== undefined,
    word: (words, ...path) => words.find((word) => word === get(path)),
    parsed: (parse, ...path) => {
      const value = get(path);
      if (typeof value !== 'string' && typeof value !== 'number') return undefined;
      const result = parse(String(value));
      if (result.ok) return result.value;
      for (const problem of result.problems) keep(problem, path);
      return undefined;
    },
    report: (problem, ...path) => keep(problem, path),
    reportKey: (problem, ...path) => {
      problems.push(locate(problem, source.atKey(path)));
    },
  };
}

/** Whether nothing found so far forbids using what was read. */
export function isSound(problems: readonly Problem[]): boolean {
  return problems.every((problem) => problem.severity !== 'error');
}

/** The whole when every part is there, otherwise null. */
export function complete<T extends object>(parts: { [K in keyof T]: T[K] | undefined }): T | null {
  return Object.values(parts).every((part) => part !== undefined) ? (parts as T) : null;
}

/** The parts that are there: for optional properties. */
export function present<T extends object>(parts: { [K in keyof T]: T[K] | undefined }): Partial<T> {
  return Object.fromEntries(Object.entries(parts).filter(([, part]) => part !== undefined)) as Partial<T>;
}
