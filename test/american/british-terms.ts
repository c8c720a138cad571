/**
 * What an American sheet does not say, and why. Words that the baker wrote (names, methods, notes) are the baker's;
 * trade words of both countries stand: cake drum, jam, skewer, bicarbonate on a label's own list.
 */
interface BritishTerm {
  term: RegExp;
  /** What Americans say, and why the British word misleads or stops them. */
  why: string;
}

/** A word by itself, in either case, with its plural. */
const word = (text: string): RegExp => new RegExp(`\\b${text}s?\\b`, 'i');

export const BRITISH_TERMS: readonly BritishTerm[] = [
  { term: word('tin'), why: 'pan; a tin is what soup is sold in' },
  { term: word('caster'), why: 'superfine or granulated; caster sugar is not sold' },
  { term: word('icing sugar'), why: 'powdered or confectioners’ sugar' },
  { term: word('plain flour'), why: 'all-purpose flour' },
  { term: word('self-raising'), why: 'self-rising' },
  { term: word('cornflour'), why: 'cornstarch; corn flour is another thing' },
  { term: word('sugarpaste'), why: 'rolled fondant' },
  { term: word('fairy cake'), why: 'cupcake' },
  { term: word('sultana'), why: 'golden raisin' },
  { term: word('treacle'), why: 'molasses' },
  { term: word('(?:plain )?sponge(?! cake)'), why: 'cake; a sponge is for washing up' },
  { term: word('greaseproof'), why: 'parchment' },
  { term: word('baking paper'), why: 'parchment paper' },
  { term: word('cling ?film'), why: 'plastic wrap' },
  { term: /\bfilm (?:round|over)\b/i, why: 'plastic wrap' },
  { term: word('fridge'), why: 'refrigerator, as in storage rules' },
  { term: word('hob'), why: 'stovetop' },
  { term: /\b(?:gas mark|gas [¼½\d])/i, why: 'American dials have no gas marks' },
  { term: /°[CF] fan\b/, why: 'convection' },
  { term: word('packet'), why: 'package' },
  { term: word('worktop'), why: 'counter' },
  { term: word('telephone'), why: 'phone' },
  { term: word('VAT'), why: 'sales tax' },
  { term: word('colour(?:ed|ing|ful|less)?'), why: 'spelling' },
  { term: word('flavour(?:ed|ing|ful|less)?'), why: 'spelling' },
  { term: word('centred?'), why: 'spelling' },
  { term: word('(?:milli|centi|kilo)?metre'), why: 'spelling' },
  { term: word('(?:milli)?litre'), why: 'spelling' },
  { term: word('fibre'), why: 'spelling' },
  { term: word('grey'), why: 'spelling' },
  { term: word('mould(?:ed)?'), why: 'spelling' },
  { term: word('neighbour'), why: 'spelling' },
  { term: word('favour'), why: 'spelling' },
  { term: word('aluminium'), why: 'aluminum' },
  { term: word('sulphite'), why: 'sulfite' },
  { term: word('mollusc'), why: 'mollusk' },
  { term: word('soya'), why: 'soy' },
  { term: /\b(?:level|label|travel)l(?:ed|ing|er)\b/i, why: 'spelling' },
  { term: /\b(?:organ|recogn|real|apolog|pasteur)is(?:e|ed|ing)\b/i, why: 'spelling' },
  {
    term: /\b(?:all|goes|draw|piped|band) round\b|\bround (?:the|a|an|its?|every|each|them)\b/i,
    why: 'around',
  },
  { term: /\bafterwards\b/i, why: 'afterward' },
];

/** Amounts in metric units that stand first, where Americans read ounces, inches and °F. */
export const METRIC_FIRST: readonly BritishTerm[] = [
  {
    term: /(?<![(\d.,/])(?<!\([^()]*)\d[\d,.]*[ \u00a0](?:g|kg|mg?l|mL|ml|mm|cm|l)(?![²³/\w])/,
    why: 'ounces, pounds, cups, inches first; metric in brackets beside them',
  },
  { term: /\b(?:kilo)?gram(?:me)?s?\b(?! cracker)/i, why: 'ounces' },
  { term: /\bmillimet(?:re|er)s?\b/i, why: 'inches; ‘a few millimeters’ too' },
  // A line that only ends a bracket goes on from the line before it.
  { term: /^(?![^(]*\))[^°]*\d[ \u00a0]°C\b/, why: '°F before °C' },
];

const anyOf = new Map<readonly BritishTerm[], RegExp>();

/** All terms at once: most texts have none. */
function quickly(terms: readonly BritishTerm[]): RegExp {
  const known = anyOf.get(terms) ?? new RegExp(terms.map(({ term }) => term.source).join('|'), 'i');
  anyOf.set(terms, known);
  return known;
}

/** Every term in a text, as 'tin: … the tin is …'. */
export function termsIn(text: string, terms: readonly BritishTerm[]): string[] {
  if (!quickly(terms).test(text)) return [];
  return terms.flatMap(({ term, why }) => {
    const found = term.exec(text);
    return found === null
      ? []
      : [`‘${found[0]}’ (${why}): ${text.slice(Math.max(0, found.index - 40), found.index + 60)}`];
  });
}
