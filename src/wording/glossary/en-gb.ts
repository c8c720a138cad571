/** British English for the glossary. */
import type { GlossaryTerm, GlossaryWords } from './glossary-words.ts';

const term = (id: string, name: string, meaning: string): GlossaryTerm => ({ id, term: name, meaning });

export const enGbGlossary: GlossaryWords = {
  title: 'Words used here',
  description: 'What the words on these pages and prints mean.',
  lead: 'One word for one thing, the same on every page and print.',
  terms: [
    term(
      'allergen',
      'Allergen',
      'A food that can make some people ill even in traces. Fourteen of them must be named by law in the UK and the EU, nine in the US.',
    ),
    term(
      'band',
      'Band',
      'Wet cloth or folded paper round the outside of a tin, so that the edge does not set and brown before the middle is done.',
    ),
    term(
      'batter',
      'Batter',
      'The cake before it is baked, ready for the tin. Its weight is what one pours by.',
    ),
    term('board', 'Board', 'What a cake stands on: a drum below all, a thin card below each further tier.'),
    term(
      'bowlful',
      'Bowlful',
      'What the mixer takes at once. A mix that is more is made in several, each with whole eggs.',
    ),
    term(
      'card',
      'Card',
      'The thin board under each tier above the lowest, cut to its size, so that the supports below have something firm to carry.',
    ),
    term(
      'coating',
      'Coating',
      'What goes round and over a cake: buttercream, ganache, or a rolled sheet over either.',
    ),
    term(
      'core',
      'Heating core',
      'A metal piece that stands in the middle of a wide tin and brings heat there.',
    ),
    term('creamed', 'Creamed', 'Made by beating butter and sugar until pale before the eggs go in.'),
    term(
      'crumb-coat',
      'Crumb coat',
      'The first thin coat, which holds the crumbs, so that the final one stays clean.',
    ),
    term('dam', 'Dam', 'A bead of buttercream piped round a joint, to keep a soft filling in.'),
    term(
      'done-test',
      'Done test',
      'How one tells that a cake is ready: it springs back, a skewer comes out clean, the edge draws away.',
    ),
    term(
      'dowel',
      'Dowel',
      'A rod down the middle of the whole stack, pushed through every card, so that no tier slides on the way. It is not food and comes out before cutting.',
    ),
    term('drum', 'Drum', 'The thick board that the whole cake stands and is carried on.'),
    term(
      'dummy',
      'Dummy',
      'A tier of foam that is covered like a cake, for height. It is not food and not counted in the portions.',
    ),
    term('edition', 'Edition', 'The date of all figures on these pages. A new edition may tell new ones.'),
    term('egg-ladder', 'Egg ladder', 'One egg, two eggs, three: what each makes, and which tins that fills.'),
    term('fairy-case', 'Fairy cake', 'A small cake in a paper case: where batter goes that is left over.'),
    term('filling', 'Filling', 'What goes between the layers of a cake.'),
    term(
      'finish-card',
      'Finish card',
      'A paper for one filling or coating: batches by weight, how it is made and keeps, what to beware of.',
    ),
    term(
      'finished-height',
      'Finished height',
      'How high the cake stands when it is baked and cool, at its edge.',
    ),
    term(
      'flavour',
      'Flavour',
      'Something changed or added in a recipe, with the rest brought into balance again.',
    ),
    term(
      'ganache',
      'Ganache',
      'Chocolate and cream, melted together; how much chocolate decides how firm it sets.',
    ),
    term(
      'keep',
      'Kept top tier',
      'A tier that is baked and stacked but kept for another day, and so not counted in the portions.',
    ),
    term('layer', 'Layer', 'A slice of sponge within a tier.'),
    term('lining', 'Lining', 'Paper inside a tin, cut to its base and its side.'),
    term('mix', 'Mix', 'Batter that is made together in one go for several tins, in one bowlful or more.'),
    term(
      'offcut',
      'Offcut',
      'What comes off a cake when its top is cut level. It is paid for, but is no part of the cake that is sold.',
    ),
    term('order', 'Order', 'What a customer gets: tiers, a day, portions, and what has been decided.'),
    term(
      'portion',
      'Portion',
      'A piece as it is cut: a dessert portion is one inch by two, a finger one by one, as high as the cake.',
    ),
    term(
      'proven-bake',
      'Proven bake',
      'Tins and a finished height that a known weight of batter filled well. Everything is scaled from these.',
    ),
    term(
      'raw-fill',
      'Raw fill',
      'How deep the batter stands in the tin before it goes into the oven, measured from the base.',
    ),
    term(
      'recipe-card',
      'Recipe card',
      'A paper for one recipe with its flavours: weights for a few tins, method, oven, and how to tell that it is done.',
    ),
    term(
      'scale-step',
      'Scale step',
      'What the scale can show: five grams on most, half a gram on a fine one.',
    ),
    term(
      'spare',
      'Spare',
      'What is made of a filling or coating beyond what goes on the cake, because bowl, bag and scraper keep some.',
    ),
    term('sponge', 'Sponge', 'A cake raised by beaten eggs, by powder, or by both.'),
    term('stack', 'Stack', 'Tiers standing on one another, each held up by supports in the one below.'),
    term(
      'step-up',
      'Step up',
      'To take the next whole egg and make more of everything, because the nearest would be too far off.',
    ),
    term('sugarpaste', 'Sugarpaste', 'Icing that is rolled out and laid over a coated cake.'),
    term(
      'supports',
      'Supports',
      'Rods that stand in a tier and carry the one above. They are not food and come out before cutting.',
    ),
    term(
      'surplus',
      'Left over',
      'Batter that a mix makes beyond what its tins ask for, because eggs are whole; of parted eggs, the yolks or whites that nothing asks for.',
    ),
    term('tier', 'Tier', 'One cake in a stack, however many layers it has.'),
    term('tin', 'Tin', 'What a cake is baked in. Its measures are those of the inside, at the rim.'),
    term(
      'tin-chart',
      'Tin chart',
      'The table of all tins for one recipe: eggs, batter and weights for each.',
    ),
    term(
      'whisked',
      'Whisked',
      'Made by whisking eggs and sugar until thick; it will not wait once it is mixed.',
    ),
    term('working', 'Working', 'How a figure came about, step by step, with every number that went into it.'),
    term(
      'yield-density',
      'Yield density',
      'What batter gives in finished cake: grams for every millilitre, known from proven bakes.',
    ),
  ],
};
