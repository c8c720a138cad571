/** A tin that is not on the shelf: a shape and its inside measures become a description, read like any other. */
import { useState } from 'preact/hooks';
import { parseSpec } from '../../parse/spec.ts';
import type { PlannerWords } from '../../wording/planner/index.ts';
import { told } from '../answer.ts';
import { type PlanState, withTin } from '../plan-state.ts';
import type { PartProps } from './part-props.ts';

type ShapeName = keyof PlannerWords['shapes'];
type SizeName = keyof PlannerWords['sizes'];

/** The measures of each shape, in the order in which they are asked for. */
const MEASURES: Record<ShapeName, readonly SizeName[]> = {
  round: ['across', 'depth'],
  square: ['side', 'depth'],
  rectangle: ['length', 'width', 'depth'],
  hexagon: ['flats', 'depth'],
  octagon: ['flats', 'depth'],
  'long-octagon': ['length', 'width', 'slant', 'depth'],
  oval: ['length', 'width', 'depth'],
  heart: ['across', 'depth'],
  petal: ['petals', 'across', 'depth'],
  ring: ['across', 'tube', 'depth'],
  dome: ['across', 'depth'],
  measured: ['volume', 'depth'],
};

const SHAPES = Object.keys(MEASURES) as ShapeName[];

/** 'round 7in x 3in', as `mix --tins` reads it. */
function description(
  shape: ShapeName,
  sizes: Partial<Record<SizeName, string>>,
  unit: 'in' | 'mm',
  volumeUnit: 'ml' | 'cups',
): string {
  const length = (name: SizeName): string => `${(sizes[name] ?? '').trim()}${unit}`;
  const deep = ` x ${length('depth')}`;
  switch (shape) {
    case 'round':
    case 'dome':
      return `${shape} ${length('across')}${deep}`;
    case 'square':
      return `square ${length('side')}${deep}`;
    case 'rectangle':
    case 'oval':
      return `${shape} ${length('length')} by ${length('width')}${deep}`;
    case 'long-octagon':
      return `${shape} ${length('length')} by ${length('width')} slant ${length('slant')}${deep}`;
    case 'hexagon':
    case 'octagon':
      return `${shape} flats ${length('flats')}${deep}`;
    case 'heart':
      return `heart across ${length('across')}${deep}`;
    case 'petal':
      return `petal${(sizes.petals ?? '').trim()} ${length('across')}${deep}`;
    case 'ring':
      return `ring ${length('across')} tube ${length('tube')}${deep}`;
    case 'measured':
      return `measured ${(sizes.volume ?? '').trim()}${volumeUnit === 'ml' ? 'ml' : ' cups'}${deep}`;
  }
}

function read(text: string, { content }: PartProps): string[] {
  const { tins } = content.kitchen;
  const parsed = parseSpec(`1 x ${text}`, { tins, outlines: content.outlines });
  return parsed.ok ? [] : told(parsed.problems);
}

export function OtherTin(props: PartProps) {
  const { words, state, change } = props;
  const [shape, setShape] = useState<ShapeName>('round');
  const [unit, setUnit] = useState<'in' | 'mm'>('in');
  const [sizes, setSizes] = useState<Partial<Record<SizeName, string>>>({});
  const [wrong, setWrong] = useState<string[]>([]);
  const add = (event: Event): void => {
    event.preventDefault();
    const text = description(shape, sizes, unit, words.volumeUnit);
    const problems = read(text, props);
    setWrong(problems);
    const plan: PlanState = state;
    if (problems.length === 0)
      change(withTin(plan, text, 1 + (plan.tins.find(({ tin }) => tin === text)?.count ?? 0)));
  };
  return (
    <details class="other-tin">
      <summary>{words.tins.other}</summary>
      <form onSubmit={add} novalidate>
        <p id="other-lead">{words.tins.otherLead}</p>
        <div class="fields">
          <label>
            {words.tins.shape}
            <select value={shape} onChange={(event) => setShape(event.currentTarget.value as ShapeName)}>
              {SHAPES.map((name) => (
                <option key={name} value={name}>
                  {words.shapes[name]}
                </option>
              ))}
            </select>
          </label>
          <label>
            {words.unit}
            <select value={unit} onChange={(event) => setUnit(event.currentTarget.value as 'in' | 'mm')}>
              <option value="in">in</option>
              <option value="mm">mm</option>
            </select>
          </label>
          {MEASURES[shape].map((name) => (
            <label key={name}>
              {words.sizes[name]}
              <input
                inputmode={unit === 'in' ? 'text' : 'decimal'}
                autocomplete="off"
                value={sizes[name] ?? ''}
                onInput={(event) => setSizes({ ...sizes, [name]: event.currentTarget.value })}
              />
            </label>
          ))}
        </div>
        <button type="submit" class="next">
          {words.tins.addOther}
        </button>
        <div role="status">
          {wrong.map((text) => (
            <p class="wrong" key={text}>
              {text}
            </p>
          ))}
        </div>
      </form>
    </details>
  );
}
