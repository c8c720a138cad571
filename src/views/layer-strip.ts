/**
 * Where do I cut the sponge? A strip as long as the cake's outside wall and a lap, as high as the cake, with a
 * line at the top of every equal layer and at the height that each recipe comes out of the tin.
 */
import { finishedHeight } from '../compute/batter/finished-height.ts';
import { outlinePerimeterMm, ringDepths } from '../compute/outline/index.ts';
import { tinOutline } from '../compute/shapes/index.ts';
import type { FinishingSettings } from '../domain/finishing.ts';
import { quantiseMm } from '../domain/quantise.ts';
import type { Recipe } from '../domain/recipe.ts';
import type { Tin } from '../domain/tin.ts';
import type { TemplateWords } from '../wording/lining-template/index.ts';
import { LINING } from './lining-allowances.ts';
import type { TemplateGuide, TemplatePiece } from './lining-template.types.ts';
import { MIRRORED } from './lining-template-mirrors.ts';
import { mmText, numberedPieces } from './lining-template-pieces.ts';
import { guide, lapLine, levelLine, type PieceShape, rectangleShape } from './lining-template-steps.ts';

interface Level {
  kind: 'level' | 'baked';
  /** One, or several that lie too near together for a name each. */
  heightsMm: number[];
  text: string;
}

/** A height as baked is a short mark at the start of the strip, so that the lines to cut at stay plain. */
const TICK_MM = 12;
/** Marks nearer together than this share their name. */
const NAME_ROOM_MM = 4.2;

function layerLevels({ cakeHeightMm, layers }: FinishingSettings, words: TemplateWords): Level[] {
  return Array.from({ length: layers }, (_, index): Level => {
    const heightMm = quantiseMm((cakeHeightMm * (index + 1)) / layers);
    const isTop = index === layers - 1;
    const text = isTop ? words.guides.top(mmText(heightMm)) : words.guides.layer(index + 1, mmText(heightMm));
    return { kind: 'level', heightsMm: [heightMm], text };
  });
}

function bakedLevels(tin: Tin, recipes: readonly Recipe[], words: TemplateWords): Level[] {
  const heights = recipes.flatMap((recipe) => {
    const height = finishedHeight(recipe, tin);
    return height.ok ? [height.value.heightMm] : [];
  });
  const groups: number[][] = [];
  for (const heightMm of [...new Set(heights)].sort((a, b) => a - b)) {
    const group = groups.at(-1);
    const below = group?.at(-1);
    if (group !== undefined && below !== undefined && heightMm - below < NAME_ROOM_MM) group.push(heightMm);
    else groups.push([heightMm]);
  }
  return groups.map((heightsMm) => {
    const text = words.guides.bake(heightsMm.map(mmText).join(', '));
    return { kind: 'baked', heightsMm, text };
  });
}

/** The lines of a levelling strip: the layers from the board upwards, then the heights as baked. */
function levelsFor(
  tin: Tin,
  recipes: readonly Recipe[],
  finishing: FinishingSettings,
  words: TemplateWords,
): Level[] {
  return [...layerLevels(finishing, words), ...bakedLevels(tin, recipes, words)];
}

function levelGuide({ kind, heightsMm, text }: Level, strip: PieceShape): TemplateGuide {
  const lengthMm = kind === 'baked' ? TICK_MM : undefined;
  const steps = heightsMm.flatMap((heightMm) => levelLine(strip, heightMm, lengthMm));
  const isEdge = heightsMm.every((heightMm) => heightMm >= strip.heightMm);
  return guide(kind, text, steps, !isEdge);
}

function levelGuides(strip: PieceShape, levels: readonly Level[], words: TemplateWords): TemplateGuide[] {
  return [
    ...levels.map((level) => levelGuide(level, strip)),
    guide('foot', words.guides.board, levelLine(strip, 0), false),
    guide('lap', words.guides.lap, lapLine(strip, LINING.overlapMm)),
  ];
}

/** One strip for each outside wall; none for a dome, or a tin whose walls are not measured. */
export function layerStrips(
  tin: Tin,
  recipes: readonly Recipe[],
  finishing: FinishingSettings,
  words: TemplateWords,
): TemplatePiece[] {
  const outline = tinOutline(tin);
  if (outline === null || tin.shape.kind === 'dome') return [];
  const depths = ringDepths(outline);
  const levels = levelsFor(tin, recipes, finishing, words);
  const heightMm = Math.max(...levels.flatMap((level) => level.heightsMm));
  const outer = outline.rings.filter((_, index) => (depths[index] ?? 0) % 2 === 0);
  const strips = outer.map((ring): TemplatePiece => {
    const lengthMm = quantiseMm(outlinePerimeterMm({ rings: [ring] }) + LINING.overlapMm);
    const shape = rectangleShape(lengthMm, heightMm);
    return {
      id: 'levels',
      group: 'levelling',
      name: words.levels,
      count: 1,
      ...shape,
      guides: levelGuides(shape, levels, words),
      centreText: null,
      sizeText: words.strip(mmText(shape.widthMm), mmText(shape.heightMm)),
      cutText: words.cut(1),
      mirrored: MIRRORED,
    };
  });
  return numberedPieces(strips, words);
}
