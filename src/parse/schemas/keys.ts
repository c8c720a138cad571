/** The words that every schema of a content file is made of. Schemas check text only; nothing is converted. */
import * as z from 'zod';

/** Keys that may not be misspelt: an unknown one is an error that names the nearest. */
export function keys<S extends z.core.$ZodLooseShape>(shape: S): z.ZodObject<S, z.core.$strict> {
  return z.strictObject(shape, {
    error: (issue) => (issue.code === 'unrecognized_keys' ? Object.keys(shape).join(' ') : undefined),
  });
}

/** A line of text that is not blank. */
export function line(description: string, example: string): z.ZodString {
  return z
    .string()
    .regex(/\S/)
    .max(300)
    .meta({ description, examples: [example] });
}

/** Text of several lines that is not blank. */
export function paragraph(description: string, example: string): z.ZodString {
  return z
    .string()
    .regex(/\S/)
    .max(20_000)
    .meta({ description, examples: [example] });
}

/** Marks texts that a unit parser will judge, so that a bare number gets the advice that fits. */
export const QUANTITY = 'quantity';

function quantity(description: string, examples: string[], pattern: string): z.ZodString {
  // The pattern is for editors, which check as one types; the parsers say more about what is wrong.
  return z.string({ error: QUANTITY }).meta({ description, examples, pattern });
}

const NUMBER = '^ *(\\d|\\.\\d|[¼½¾⅓⅔⅛⅜⅝⅞])';

export const length = (description: string, ...examples: string[]): z.ZodString =>
  quantity(description, examples, `${NUMBER}.*(mm|cm|in|inch|inches|["″])$`);
export const mass = (description: string, ...examples: string[]): z.ZodString =>
  quantity(description, examples, `${NUMBER}.*(g|kg|oz|lb|grams?|ounces?|pounds?)$`);
export const volume = (description: string, ...examples: string[]): z.ZodString =>
  quantity(description, examples, `${NUMBER}.*(ml|l|tsp|tbsp|cups?|oz|pint)$`);
export const share = (description: string, ...examples: string[]): z.ZodString =>
  quantity(description, examples, `${NUMBER}.*%$`);
export const density = (description: string, ...examples: string[]): z.ZodString =>
  quantity(description, examples, `${NUMBER}.*g/ml$`);
export const perArea = (description: string, ...examples: string[]): z.ZodString =>
  quantity(description, examples, `${NUMBER}.*g/cm[2²]$`);
export const days = (description: string, ...examples: string[]): z.ZodString =>
  quantity(description, examples, `${NUMBER}.*(d|days?|weeks?)$`);
export const altitude = (description: string, ...examples: string[]): z.ZodString =>
  quantity(description, examples, `${NUMBER}.*(m|metres?|meters?|ft|foot|feet)$`);
export const temperature = (description: string, ...examples: string[]): z.ZodString =>
  quantity(description, examples, '^(gas|[Ff]an|[ \\d]).*$');
export const day = (description: string): z.ZodString =>
  quantity(description, ['2026-11-01'], '^\\d{4}-\\d{2}-\\d{2}$');
export const duration = (description: string, ...examples: string[]): z.ZodString =>
  quantity(description, examples, `${NUMBER}.*(min|mins|minutes?|h|hrs?|hours?|d|days?)$`);
export const surface = (description: string, ...examples: string[]): z.ZodString =>
  quantity(description, examples, `${NUMBER}.*cm[2²]$`);
export const rate = (description: string, ...examples: string[]): z.ZodString =>
  quantity(description, examples, `${NUMBER}.* per (h|kWh)$`);
export const timeOfDay = (description: string, ...examples: string[]): z.ZodString =>
  quantity(description, examples, '^\\d{2}:\\d{2}$');
export const moment = (description: string, ...examples: string[]): z.ZodString =>
  quantity(description, examples, '^\\d{4}-\\d{2}-\\d{2}[ T]+\\d{2}:\\d{2}$');

/** A sum of money: figures alone, which YAML reads as a number. */
export const money = (description: string, ...examples: string[]) =>
  z.union([z.string(), z.number()]).meta({ description, examples: examples.map(Number) });

export const spec = (description: string): z.ZodString =>
  quantity(description, ['2 x round-6', '1 x round 6in x 3in'], '^ *\\d+ *[x×]');
