/** 'milk, eggs and wheat'. */
export function listInWords(items: readonly string[], and: string): string {
  const last = items.at(-1) ?? '';
  return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} ${and} ${last}`;
}
