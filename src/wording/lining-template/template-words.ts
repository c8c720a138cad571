/** The words of a lining template; every length comes as text in mm. A missing key does not compile. */
export interface TemplateWords {
  title: (tin: string) => string;
  summary: (size: string) => string;
  base: string;
  side: string;
  tube: string;
  longSide: string;
  shortSide: string;
  levels: string;
  board: string;
  /** 'Side strip 2', where a tin has several of a kind. */
  numbered: (name: string, number: number) => string;
  cut: (count: number) => string;
  across: (mm: string) => string;
  by: (widthMm: string, heightMm: string) => string;
  strip: (lengthMm: string, heightMm: string) => string;
  sector: (innerMm: string, outerMm: string, degrees: string) => string;
  panel: (footMm: string, headMm: string, heightMm: string) => string;
  guides: {
    rim: string;
    lap: string;
    foot: string;
    board: string;
    cake: string;
    layer: (layer: number, mm: string) => string;
    top: (mm: string) => string;
    bake: (mm: string) => string;
  };
  centre: string;
  notes: {
    base: (clearanceMm: string) => string;
    followed: string;
    strip: (lapMm: string, collarMm: string) => string;
    sector: string;
    panel: string;
    trace: (clearanceMm: string) => string;
    curvedWall: string;
    unknownShape: string;
    levels: (heightMm: string, layers: number) => string;
    board: (undercoatMm: string) => string;
    ownNote: (note: string) => string;
  };
  cautions: {
    'pattern-not-food-safe': string;
    'paper-near-element': string;
    'levels-touch-cake': string;
    'board-not-food-safe': string;
    'flour-allergen': string;
  };
}
