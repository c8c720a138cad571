/** Everything the planner says. Figures come as text. A missing key does not compile. */
import type { PlaceKind } from '../../domain/order.ts';
import type { LeftOverWords } from '../left-over.ts';

export interface PlannerWords {
  title: string;
  /** The way in from the home page. */
  open: string;
  lead: string;
  description: string;
  /** Shown where scripts do not run. */
  noScript: string;
  waiting: string;
  recipe: string;
  flavours: string;
  noFlavours: string;
  ask: { legend: string; tins: string; eggs: string; portions: string };
  tins: {
    heading: string;
    lead: string;
    /** Button that adds what is owned of a tin: 'Add 2 × Six-inch round' */
    add: (count: number, name: string) => string;
    /** The same button once the tin is on the plan. */
    remove: (name: string) => string;
    more: (name: string) => string;
    fewer: (name: string) => string;
    onPlan: (count: number) => string;
    other: string;
    otherLead: string;
    shape: string;
    addOther: string;
    clear: string;
    /** Brings back what was cleared. */
    bringBack: string;
  };
  sizes: Record<
    'across' | 'side' | 'length' | 'width' | 'flats' | 'slant' | 'tube' | 'depth' | 'volume' | 'petals',
    string
  >;
  shapes: Record<
    | 'round'
    | 'square'
    | 'rectangle'
    | 'hexagon'
    | 'octagon'
    | 'long-octagon'
    | 'oval'
    | 'heart'
    | 'petal'
    | 'ring'
    | 'dome'
    | 'measured',
    string
  >;
  unit: string;
  /** What the water that a tin holds is measured in. */
  volumeUnit: 'ml' | 'cups';
  options: {
    heading: string;
    height: string;
    heightHint: (usual: string) => string;
    egg: string;
    eggUsual: (size: string) => string;
    mass: string;
    grams: string;
    ounces: string;
    step: string;
    stepUsual: (step: string) => string;
    stepOf: (step: string) => string;
    portion: string;
    finishes: string;
    finishesLead: string;
  };
  eggsAsked: string;
  portionsAsked: string;
  answer: {
    heading: string;
    empty: string;
    batter: (weight: string, unit: string) => string;
    weigh: string;
    bowls: string;
    fills: (what: string) => string;
    tins: string;
    pour: (weight: string, unit: string) => string;
    inEach: (weight: string, unit: string) => string;
    stands: (mm: string, share: string) => string;
    bakesTo: (mm: string) => string;
    bake: (dial: string, look: string, by: string) => string;
    serves: (portions: string) => string;
    servesAll: (portions: string, size: string) => string;
    finishes: string;
    make: (weight: string, unit: string) => string;
    buy: (weight: string, unit: string) => string;
    onCake: (weight: string, unit: string) => string;
    perCake: string;
    working: string;
    workingLead: string;
    workingFailed: string;
    sameForAll: string;
    check: string;
    caution: string;
    wrong: string;
    /** A plan that was sent names what this kitchen does not have. */
    notHere: (names: string) => string;
    left: string;
    leftOver: LeftOverWords;
    toPlan: string;
    /** Hands the plan's address to a message. */
    send: string;
    copied: string;
    notCopied: string;
    chart: string;
    noFills: string;
    take: (what: string) => string;
    exactly: (eggs: string) => string;
  };
  own: {
    heading: string;
    lead: string;
    egg: string;
    bowl: string;
    step: string;
    /** As the three fields may be filled in. */
    examples: { egg: string; bowl: string; step: string };
    owned: (tin: string) => string;
    forget: string;
    save: string;
    open: string;
    /** When a script did not come. */
    unsaved: string;
  };
  print: {
    heading: string;
    lead: string;
    paper: string;
    /** The sheet of this plan. */
    plan: string;
    chart: (recipe: string) => string;
    template: (tin: string) => string;
    busy: string;
    failed: string;
  };
  cost: {
    heading: string;
    lead: string;
    unpriced: (what: string) => string;
    prices: string;
    pricesLead: string;
    example: string;
    eggExample: string;
    open: string;
    forget: string;
  };
  order: {
    heading: string;
    lead: string;
    title: string;
    reference: string;
    at: string;
    place: string;
    places: Record<PlaceKind, string>;
    wanted: string;
    notes: string;
    stacked: string;
    /** While the least that an order needs is missing. */
    needs: string;
    sheet: string;
    labels: string;
    save: string;
    /** Over the files that were made, each a button to save it by. */
    made: string;
  };
  worktop: {
    start: string;
    title: string;
    leave: string;
    weigh: string;
    method: string;
    done: (done: string, of: string) => string;
    timer: string;
    minutes: (minutes: string) => string;
    startTimer: (name: string) => string;
    stopTimer: string;
    ringing: (name: string) => string;
    awake: string;
    notAwake: string;
    firstLook: string;
    doneBy: string;
  };
}
