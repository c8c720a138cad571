/** The words of the tins' pages. A missing key does not compile. */
import type { TinMaterial } from '../../domain/tin.ts';

export interface TinWords {
  title: string;
  description: (kitchen: string) => string;
  lead: (tins: number, sizes: number) => string;
  tinDescription: (name: string, size: string) => string;
  facts: Record<'holds' | 'depth' | 'area' | 'wall' | 'material' | 'owned', string>;
  materials: Record<TinMaterial, string>;
  /** Of the ruler that stands by all drawings. */
  scaleAlt: (inches: number, centimetres: number) => string;
  noEggs: string;
  /** Tins of several cups. */
  bunTins: string;
  bunTin: (cups: number, cup: string, holds: string, outside: string) => string;
  bunTinBake: (look: string, by: string) => string;
  lining: {
    base: string;
    tube: string;
    side: string;
    sides: (count: number) => string;
    noPaper: string;
    baseText: (clearance: string) => string;
    strip: (length: string, height: string) => string;
    sector: (inner: string, outer: string, degrees: string) => string;
    panel: (foot: string, head: string, height: string) => string;
    trace: string;
    curved: string;
    unmeasured: string;
  };
}
