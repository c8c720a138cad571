/** The fixed words of printed sheets; everything with a value in it comes worded from the view. */
import type { DateFormat } from '../date.ts';
import type { LeftOverWords } from '../left-over.ts';

export interface PrintLabels extends LeftOverWords {
  date: DateFormat;
  tin: string;
  eggs: string;
  /** Under the heading of the eggs, as the exact number stands under the whole one. */
  exactBelow: string;
  batter: string;
  grams: string;
  filling: string;
  caution: string;
  check: string;
  finishedHeight: string;
  eggSize: string;
  provenIn: string;
  chart: string;
  ladder: string;
  ladderLead: string;
  fills: string;
  notes: string;
  edition(date: string): string;
  page(page: number, pages: number): string;
  scale(scale: number): string;
  countOf(count: number, name: string): string;
  eggsExactly(eggs: string): string;
  beaten: string;
  fillDeep(mm: string, share: string): string;
  inEach(grams: string): string;
  inTin(grams: string): string;
  bakesTo(mm: string): string;
  holds(millilitres: string): string;
  working(name: string): string;
  /** Beside the code that leads to the page behind a sheet. */
  allWorking: string;
}
