/** Something wrong with what was given: a value, never an exception. */
export interface Place {
  file: string;
  line?: number;
  column?: number;
}

export interface Problem extends Partial<Place> {
  /** Stable, kebab-case; one per kind of mistake. */
  code: string;
  severity: 'error' | 'warning';
  /** What was found and what was expected, in one sentence. */
  message: string;
  /** What to write instead; the nearest valid name where there is one. */
  hint?: string;
}

/** A warning that travels with the result it concerns. Codes are stable. */
export interface Warning {
  code: string;
  message: string;
}
