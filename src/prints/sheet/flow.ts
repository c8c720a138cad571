/** Puts the strips of all sections on pages: nothing split, nothing lonely, repeated headers where a page begins. */
import type { SheetContext } from './sheet-context.ts';
import type { Block, Strip } from './strip.ts';
import type { Surface } from './surface.ts';

export interface Section {
  /** One structure section per key, however many pages it runs over. */
  key: string;
  blocks: Block[];
  startsPage?: boolean;
}

interface Frame {
  widthMm: number;
  heightMm: number;
}

interface Placed {
  yMm: number;
  heightMm: number;
  section: string;
  draw(surface: Surface, xMm: number, yMm: number): void;
}

export interface FlowedPage {
  draw(surface: Surface, xMm: number, yMm: number): void;
}

/** A page that says how far down it is filled. */
export interface FilledPage extends FlowedPage {
  /** From the top of the frame to the foot of what stands lowest. */
  usedMm: number;
}

/** Runs of strips that ask to stay on one page. */
function chains(strips: Strip[]): Strip[][] {
  const runs: Strip[][] = [];
  let run: Strip[] = [];
  for (const strip of strips) {
    run.push(strip);
    if (strip.keepWithNext) continue;
    runs.push(run);
    run = [];
  }
  return run.length > 0 ? [...runs, run] : runs;
}

const heightOf = (chain: Strip[]): number =>
  chain.reduce((sum, strip, index) => sum + strip.heightMm + (index > 0 ? strip.spaceMm : 0), 0);

class Pages {
  readonly pages: Placed[][] = [];
  readonly #frame: Frame;
  #usedMm = Number.POSITIVE_INFINITY;

  constructor(frame: Frame) {
    this.#frame = frame;
  }

  begin(): void {
    this.pages.push([]);
    this.#usedMm = 0;
  }

  get #blank(): boolean {
    return this.#usedMm === 0;
  }

  add(chain: Strip[], section: string): void {
    const space = this.#blank ? 0 : (chain[0]?.spaceMm ?? 0);
    const fits = this.#usedMm + space + heightOf(chain) <= this.#frame.heightMm + 1e-6;
    if (fits) for (const strip of chain) this.#place(strip, section);
    else if (!this.#blank) {
      this.begin();
      this.add(chain, section);
    } else if (chain.length > 1) {
      // Longer than a whole page: the wish to stay together gives way.
      for (const strip of chain) this.add([{ ...strip, keepWithNext: false }], section);
    } else throw new Error(`a strip of ${heightOf(chain)} mm is taller than the page`);
  }

  #place(strip: Strip, section: string): void {
    const page = this.pages.at(-1);
    if (this.#blank && strip.repeated) {
      const { heightMm, draw } = strip.repeated;
      page?.push({ yMm: 0, heightMm, section, draw });
      this.#usedMm = heightMm;
    } else if (!this.#blank) this.#usedMm += strip.spaceMm;
    page?.push({ yMm: this.#usedMm, heightMm: strip.heightMm, section, draw: strip.draw });
    this.#usedMm += strip.heightMm;
  }
}

function drawPlaced(placed: Placed[], surface: Surface, xMm: number, yMm: number): void {
  for (const item of placed)
    surface.within('Sect', { key: item.section }, () => item.draw(surface, xMm, yMm + item.yMm));
}

export function flow(sections: Section[], frame: Frame, context: SheetContext): FilledPage[] {
  const pages = new Pages(frame);
  for (const section of sections) {
    if (section.startsPage || pages.pages.length === 0) pages.begin();
    const strips = section.blocks.flatMap((block) => block(frame.widthMm, context));
    for (const chain of chains(strips)) pages.add(chain, section.key);
  }
  return pages.pages.map((placed) => ({
    usedMm: Math.max(0, ...placed.map(({ yMm, heightMm }) => yMm + heightMm)),
    draw: (surface, xMm, yMm) => drawPlaced(placed, surface, xMm, yMm),
  }));
}
