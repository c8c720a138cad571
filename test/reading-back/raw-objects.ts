/**
 * The objects of an uncompressed PDF as text, for what the reader does not give back: scopes, font files, content
 * operators. Works on files written without compression only, and says so when there is none to find.
 */
export interface RawObject {
  id: number;
  /** Dictionary or value, without the stream. */
  head: string;
  stream: string | null;
}

export function rawObjects(bytes: Uint8Array): RawObject[] {
  const text = new TextDecoder('latin1').decode(bytes);
  const found = [...text.matchAll(/(?:^|\n)(\d+) 0 obj\n([\s\S]*?)\nendobj/g)].map(([, id, body = '']) => {
    const at = body.indexOf('stream\n');
    return {
      id: Number(id),
      head: at < 0 ? body : body.slice(0, at),
      stream: at < 0 ? null : body.slice(at + 'stream\n'.length).replace(/\nendstream$/, ''),
    };
  });
  if (found.length === 0) throw new Error('no objects found: is the file compressed?');
  return found;
}

export const objectsLike = (objects: RawObject[], pattern: RegExp): RawObject[] =>
  objects.filter(({ head }) => pattern.test(head));

/** Content streams of all pages. */
export function pageContents(objects: RawObject[]): string[] {
  return objectsLike(objects, /\/Type \/Page\n/).map(({ head }) => {
    const id = Number(/\/Contents (\d+) 0 R/.exec(head)?.[1]);
    const content = objects.find((object) => object.id === id)?.stream;
    if (content == null) throw new Error(`page content ${id} is missing`);
    return content;
  });
}
