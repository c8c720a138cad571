/** What the site says around its pages: finding, being offline, a new edition. */
export interface AroundWords {
  find: {
    title: string;
    description: string;
    lead: string;
    label: string;
    none: (asked: string) => string;
    count: (count: number) => string;
    all: string;
    noScript: string;
  };
  offline: {
    /** A page or print that was not kept on the device. */
    title: string;
    text: string;
    /** A new edition waits. */
    fresh: string;
    take: string;
    /** A button beside a group of prints; `size` as people say it. */
    keep: (size: string) => string;
    /** While they come; … twice, for how many of how many. */
    keeping: string;
    kept: string;
    letGo: string;
    notKept: string;
  };
  /** What kind of thing a recipe makes, to machines. */
  cake: string;
  feed: { title: (kitchen: string) => string };
  kinds: Record<'recipe' | 'chart' | 'tin' | 'flavour' | 'finish' | 'page' | 'term', string>;
}
