/** The sheet interface drawn as PDF operators: one content write per page, every mark tagged or an artifact. */
import type { FontRole } from '../domain/house-style.ts';
import type {
  Box,
  LinkTarget,
  Origin,
  Paint,
  PathStep,
  StructureTag,
  Surface,
  TagOptions,
  TextRun,
} from '../prints/sheet/surface.ts';
import type { Bookmark } from './bookmarks.ts';
import { shareGlyphs } from './embedded-glyphs.ts';
import type { LoadedFonts } from './fonts.ts';
import { latin1Bytes } from './latin1.ts';
import {
  clipOperators,
  colourOperands,
  isPlaced,
  PT_PER_MM,
  pathOperators,
  pdfNumber,
  showText,
  textMatrix,
} from './operators.ts';
import type { PdfFont, PdfInternals, PdfPage } from './pdfkit-internals.ts';
import type { ShapedText } from './shaped-text.ts';
import type { PointBox, StructureElement, StructureTree } from './structure-tree.ts';

export interface MissingGlyph {
  codePoint: number;
  font: string;
  text: string;
}

/** What all pages of a document share. */
export interface DocumentState {
  pdf: PdfInternals;
  tree: StructureTree;
  fonts: LoadedFonts;
  embedded: Map<FontRole, PdfFont>;
  /** Texts as operators: a document says the same words over and over. */
  shown: Map<ShapedText, string>;
  bookmarks: Bookmark[];
  missing: MissingGlyph[];
}

/** Elements that only group others: text drawn straight into them would have no paragraph of its own. */
const grouping: ReadonlySet<StructureTag> = new Set([
  'Document',
  'Part',
  'Sect',
  'L',
  'LI',
  'Table',
  'THead',
  'TBody',
  'TR',
  'TOC',
]);

export class PageSurface implements Surface {
  readonly #state: DocumentState;
  readonly #page: PdfPage;
  readonly #pageIndex: number;
  readonly #heightMm: number;
  readonly #content: string[] = [];
  readonly #path: StructureElement[];
  #artifacts = 0;
  #marked: StructureElement | 'artifact' | null = null;
  /** What the last text was set in, and how that was written; null where the next says it afresh. */
  #set: Pick<TextRun, 'font' | 'sizePt' | 'colour'> | null = null;
  #setWritten = '';
  readonly #fonts = new Map<FontRole, PdfFont>();

  constructor(state: DocumentState, pageIndex: number, heightMm: number) {
    this.#state = state;
    this.#page = state.pdf.page;
    this.#pageIndex = pageIndex;
    this.#heightMm = heightMm;
    this.#path = [state.tree.root];
  }

  #current(): StructureElement {
    return this.#path.at(-1) ?? this.#state.tree.root;
  }

  #endMark(): void {
    if (this.#marked !== null) this.#content.push('EMC');
    this.#marked = null;
  }

  /** Opens the marked content that what follows belongs to, unless it is open already. */
  #mark(): void {
    const owner = this.#artifacts > 0 ? 'artifact' : this.#current();
    if (owner === this.#marked) return;
    this.#endMark();
    if (owner === 'artifact') this.#content.push('/Artifact BMC');
    else {
      if (grouping.has(owner.tag)) throw new Error(`content drawn straight into ${owner.tag}`);
      const mcid = this.#state.tree.content(owner, this.#page);
      this.#content.push(`/${owner.tag} <</MCID ${mcid}>> BDC`);
    }
    this.#marked = owner;
  }

  #embeddedFont(role: FontRole): PdfFont {
    const { pdf, fonts, embedded } = this.#state;
    let font = embedded.get(role);
    if (!font) {
      pdf.font(fonts[role].font);
      font = pdf._font;
      shareGlyphs(font.subset);
      embedded.set(role, font);
    }
    this.#page.fonts[font.id] ??= font.ref();
    this.#fonts.set(role, font);
    return font;
  }

  text(run: TextRun): void {
    if (run.text === '') return;
    const shaped = this.#state.fonts[run.font].shape(run.text, run.tabular ?? false);
    for (const codePoint of shaped.missing)
      this.#state.missing.push({ codePoint, font: this.#state.fonts[run.font].name, text: run.text });
    this.#mark();
    const font = this.#fonts.get(run.font) ?? this.#embeddedFont(run.font);
    this.#setIn(run, font);
    const matrix = textMatrix(run.xMm, run.yMm, run.turnDeg ?? 0);
    this.#content.push(`BT ${matrix} ${this.#shown(shaped, run.sizePt, font)} ET`);
  }

  #setIn(run: TextRun, font: PdfFont): void {
    const last = this.#set;
    if (last?.font === run.font && last.sizePt === run.sizePt && last.colour === run.colour) return;
    const written = `/${font.id} ${pdfNumber(run.sizePt)} Tf ${colourOperands(run.colour)} rg`;
    if (last === null || written !== this.#setWritten) this.#content.push(written);
    this.#set = run;
    this.#setWritten = written;
  }

  #shown(shaped: ShapedText, sizePt: number, font: PdfFont): string {
    const known = this.#state.shown.get(shaped);
    if (known !== undefined) return known;
    const operators = showText(shaped, sizePt, (glyph) => {
      const id = font.subset.includeGlyph(glyph.id);
      font.widths[id] ??= glyph.width;
      font.unicode[id] ??= glyph.codePoints;
      return id;
    });
    if (!isPlaced(shaped)) this.#state.shown.set(shaped, operators);
    return operators;
  }

  path(steps: PathStep[], paint: Paint): void {
    this.#mark();
    this.#content.push(pathOperators(steps, paint));
  }

  within(tag: StructureTag, options: TagOptions, body: () => void): void {
    if (this.#artifacts > 0) {
      body();
      return;
    }
    const box = options.box ? this.#pointBox(options.box) : null;
    this.#path.push(this.#state.tree.child(this.#current(), tag, options, box));
    body();
    if (this.#marked === this.#current()) this.#endMark();
    this.#path.pop();
  }

  artifact(body: () => void): void {
    this.#artifacts += 1;
    body();
    this.#artifacts -= 1;
  }

  clip(box: Box, body: () => void): void {
    this.#endMark();
    this.#content.push('q', clipOperators(box));
    this.#set = null;
    body();
    this.#endMark();
    this.#content.push('Q');
    this.#set = null;
  }

  link(box: Box, target: LinkTarget, description: string, body: () => void): void {
    if (this.#artifacts > 0) throw new Error('a link inside page furniture cannot be reached');
    this.within('Link', {}, () => {
      body();
      const { pdf, tree } = this.#state;
      const annotation = pdf.ref({
        Type: 'Annot',
        Subtype: 'Link',
        Rect: this.#pointBox(box),
        Border: [0, 0, 0],
        F: 4,
        // String objects become PDF strings, plain ones names.
        Contents: new String(description),
        A:
          'url' in target
            ? { S: 'URI', URI: new String(target.url) }
            : { S: 'GoTo', D: new String(target.anchor) },
      });
      annotation.data.StructParent = tree.annotation(this.#current(), this.#page, annotation);
      this.#page.annotations.push(annotation);
      annotation.end();
    });
  }

  anchor(name: string, at: Origin): void {
    const { pdf } = this.#state;
    pdf.addNamedDestination(name, 'XYZ', at.xMm * PT_PER_MM, at.yMm * PT_PER_MM, null);
  }

  bookmark(title: string, level: number, at: Origin): void {
    const topPt = (this.#heightMm - at.yMm) * PT_PER_MM;
    this.#state.bookmarks.push({ title, level, pageIndex: this.#pageIndex, topPt });
  }

  #pointBox(box: Box): PointBox {
    const bottomMm = this.#heightMm - box.yMm - box.heightMm;
    const edges = [box.xMm, bottomMm, box.xMm + box.widthMm, bottomMm + box.heightMm];
    const [left = 0, bottom = 0, right = 0, top = 0] = edges.map((mm) => mm * PT_PER_MM);
    return [left, bottom, right, top];
  }

  /** Hands the page's content over. */
  end(): void {
    this.#endMark();
    this.#content.push('');
    this.#state.pdf.addContent(latin1Bytes(this.#content.join('\n')));
  }
}
