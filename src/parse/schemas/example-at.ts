/** The example that a schema gives for what stands at a path, for messages about a missing key. */
import * as z from 'zod';

type Schema = z.core.$ZodType;

function childValue(value: unknown, step: string | number): unknown {
  return typeof value === 'object' && value !== null && Object.hasOwn(value, step)
    ? (value as Record<string | number, unknown>)[step]
    : undefined;
}

/** Which of several shapes of an entry the file means, told by the key that tells them apart. */
function chosen(union: z.ZodDiscriminatedUnion, value: unknown): Schema | undefined {
  const key = union.def.discriminator;
  const written = childValue(value, key);
  return union.options.find((option) => {
    const tag = childOf(option, key, undefined);
    return typeof written === 'string' && tag?._zod.values?.has(written) === true;
  });
}

function childOf(schema: Schema, step: string | number, value: unknown): Schema | undefined {
  if (schema instanceof z.ZodOptional) return childOf(schema.unwrap(), step, value);
  if (schema instanceof z.ZodObject) return schema.shape[String(step)];
  if (schema instanceof z.ZodArray) return schema.element;
  if (schema instanceof z.ZodRecord) return schema.valueType;
  if (!(schema instanceof z.ZodDiscriminatedUnion)) return undefined;
  const option = chosen(schema, value);
  return option === undefined ? undefined : childOf(option, step, value);
}

function exampleOf(schema: Schema): string {
  const inner = schema instanceof z.ZodOptional ? schema.unwrap() : schema;
  const { examples } = z.globalRegistry.get(inner) ?? {};
  const [example] = Array.isArray(examples) ? (examples as unknown[]) : [];
  if (typeof example === 'string' || typeof example === 'number') return String(example);
  const [word] = inner._zod.values ?? [];
  return word === undefined ? '…' : String(word);
}

/** '65 mm' for a finished height; '…' where the schema has none. `value` is the whole file as data. */
export function exampleAt(schema: Schema, path: readonly (string | number)[], value: unknown): string {
  let here: Schema | undefined = schema;
  let there = value;
  for (const step of path) {
    here = here === undefined ? undefined : childOf(here, step, there);
    there = childValue(there, step);
  }
  return here === undefined ? '…' : exampleOf(here);
}
