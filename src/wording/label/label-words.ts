/** The words of labels. What the law wants word for word (the colours warning) stands in the locale's file. */

import type { Allergen } from '../../domain/ingredient.ts';
import type { KindOfSale, LabelElement, StorageKind } from '../../domain/label-settings.ts';
import type { DateFormat } from '../date.ts';

export interface NutrientWords {
  energy: string;
  fat: string;
  saturates: string;
  carbohydrate: string;
  sugars: string;
  polyols: string;
  fibre: string;
  protein: string;
  salt: string;
}

export interface LabelWords {
  date: DateFormat;
  /** 'Lemon sponge with raspberry jam and buttercream'. */
  foodWith: (food: string, finishes: string) => string;
  /** 'Cupcakes: lemon sponge with vanilla buttercream'. */
  smallFood: (kind: string, food: string) => string;
  /** Tiers that are no cake, among what is to come off. */
  dummies: (count: number) => string;
  /** 'Sponge, Orange' as one name of a food. */
  flavoured: (food: string, flavours: readonly string[]) => string;
  ingredients: string;
  contains: string;
  mayContain: string;
  /** Points from a list that emphasises its allergens. */
  seeCapitals: string;
  boldCapitals: string;
  noneKnown: string;
  allergens: Record<Allergen, string>;
  percentages: (list: string) => string;
  percentage: (name: string, percent: string) => string;
  over100: (name: string, grams: string) => string;
  net: (amount: string) => string;
  /** How many there are, where figures are told for one. */
  portions: (count: number) => string;
  best: string;
  use: string;
  /** A place to write a date, and from when it counts. */
  dateToWrite: (days: number) => string;
  /** A tier kept for another day: frozen on, eat by. */
  kept: (freezeOn: string, eatBy: string) => string;
  storage: Record<StorageKind, string>;
  colours: (names: string) => string;
  alcohol: (names: string) => string;
  inedible: (things: string) => string;
  /** What stands inside a stack. */
  supports: string;
  nutrition: {
    title: string;
    per100: string;
    perPortion: (grams: string) => string;
    figures: NutrientWords;
    ofWhich: (what: string) => string;
    /** Between the figures of one line. */
    line: (title: string, figures: string) => string;
    missing: (names: string) => string;
    /** Why there are no figures per portion. */
    noPortion: string;
  };
  madeBy: string;
  order: (reference: string) => string;
  rules: (rules: string, date: string) => string;
  card: { title: string; crossContact: string; ask: string };
  draft: string;
  exempt: string;
  /** `from` is the day it counts from, in words; null while unknown. */
  keeps: (days: number, decidedBy: string | null, from: string | null) => string;
  needs: Record<LabelElement, string>;
  /** 'Sold' and then: */
  sale: Record<KindOfSale, string>;
  /** What is special about a kind of sale; '' for nothing. */
  saleNote: Record<KindOfSale, string>;
  needsLine: (sale: string, list: string) => string;
  needsNothing: (sale: string) => string;
  gaps: (list: string) => string;
  ties: (list: string) => string;
  gone: string;
  refused: string;
  tooSmall: {
    title: (food: string) => string;
    why: (width: string, height: string, xHeight: string) => string;
    need: (height: string, width: string) => string;
    wider: (width: string) => string;
  };
  sheet: {
    title: (size: string) => string;
    cards: (size: string) => string;
    subject: string;
    note: string;
    tooLarge: (size: string, paper: string) => string;
  };
  page: {
    nav: string;
    title: string;
    lead: string;
    matrixTitle: string;
    matrixNote: string;
    what: string;
    notThere: string;
    unknown: string;
    unknownCount: (count: number) => string;
    finish: string;
    labelsTitle: string;
    labelsAbout: string;
    sheets: string;
    labelText: string;
    working: string;
    workingAbout: string;
    ingredient: string;
    bowl: string;
    share: string;
    quid: string;
    facts: { finished: string; keeps: string; storage: string };
    notes: string;
    toAll: string;
    toRecipe: string;
    why: string;
    labelOf: (food: string) => string;
    description: (food: string) => string;
  };
}
