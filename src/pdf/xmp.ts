/**
 * The XMP packet's description of the document. The library writes the same fields but does not escape them,
 * so that a title with '&' or '<' would make the packet unreadable; this replaces it.
 */
export interface DocumentInfo {
  title: string;
  subject: string;
  author: string;
  creator: string;
  producer: string;
  lang: string;
  created: Date;
}

const escapes: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escaped = (text: string): string => text.replace(/[&<>"]/g, (mark) => escapes[mark] ?? mark);

const alternative = (name: string, text: string): string =>
  `<dc:${name}><rdf:Alt><rdf:li xml:lang="x-default">${escaped(text)}</rdf:li></rdf:Alt></dc:${name}>`;

/** Description elements for inside rdf:RDF, without the conformance claim. */
export function xmpDescription(info: DocumentInfo): string {
  const created = `${info.created.toISOString().slice(0, 19)}Z`;
  return [
    '<rdf:Description rdf:about="" xmlns:xmp="http://ns.adobe.com/xap/1.0/">',
    `<xmp:CreateDate>${created}</xmp:CreateDate>`,
    `<xmp:CreatorTool>${escaped(info.creator)}</xmp:CreatorTool>`,
    '</rdf:Description>',
    '<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/">',
    alternative('title', info.title),
    `<dc:creator><rdf:Seq><rdf:li>${escaped(info.author)}</rdf:li></rdf:Seq></dc:creator>`,
    alternative('description', info.subject),
    `<dc:language><rdf:Bag><rdf:li>${escaped(info.lang)}</rdf:li></rdf:Bag></dc:language>`,
    '</rdf:Description>',
    '<rdf:Description rdf:about="" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">',
    `<pdf:Producer>${escaped(info.producer)}</pdf:Producer>`,
    '</rdf:Description>',
  ].join('\n');
}
