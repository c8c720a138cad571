/** What the words of the trade mean here. */
export interface GlossaryTerm {
  /** Its anchor on the page. */
  id: string;
  term: string;
  meaning: string;
}

export interface GlossaryWords {
  title: string;
  description: string;
  lead: string;
  terms: readonly GlossaryTerm[];
}
