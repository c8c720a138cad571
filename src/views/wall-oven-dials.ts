/**
 * Which heat is that on another dial? One row for each gas mark; °C to the nearest ten, as dials are marked; fan
 * 20 °C or 25 °F lower. No gas marks where ovens are not marked so. Common practice: no standard exists.
 */
import {
  fanFromConventionalC,
  fanFromConventionalF,
  GAS_MARKS,
  gasMarkC,
  gasMarkF,
} from '../compute/bake/oven-scales.ts';
import type { Kitchen } from '../domain/kitchen.ts';
import { formatEighths } from '../wording/fraction.ts';
import { formatNumber } from '../wording/number.ts';
import type { WallWords } from '../wording/wall/index.ts';
import type { Figure } from './figure.ts';
import type { WallColumn, WallView } from './wall.types.ts';
import { figureCell } from './wall-cells.ts';

const toTen = (value: number): number => Math.round(value / 10) * 10;

interface Heat {
  celsius: Figure;
  fan: Figure;
  fahrenheit: Figure;
  fanFahrenheit: Figure;
  gas: Figure;
}

const fahrenheit = (value: number): Figure => ({ value, unit: 'F', text: formatNumber(value, 0) });
const celsius = (value: number): Figure => ({ value, unit: 'C', text: formatNumber(value, 0) });

function heatOfMark(mark: number): Heat[] {
  const [exactC, exactF] = [gasMarkC(mark), gasMarkF(mark)];
  if (exactC === null || exactF === null) return [];
  const dialC = toTen(exactC);
  return [
    {
      celsius: celsius(dialC),
      fan: celsius(fanFromConventionalC(dialC)),
      fahrenheit: fahrenheit(exactF),
      fanFahrenheit: fahrenheit(fanFromConventionalF(exactF)),
      gas: { value: mark, unit: 'gas', text: formatEighths(mark) },
    },
  ];
}

const ORDER: Record<Kitchen['locale'], readonly (keyof Heat)[]> = {
  'en-GB': ['celsius', 'fan', 'gas', 'fahrenheit'],
  'en-US': ['fahrenheit', 'fanFahrenheit', 'celsius', 'fan'],
};

/** The sheet of a kitchen, its own country's dial first. */
export function wallOvenDials({ name, edition, locale }: Kitchen, words: WallWords): WallView {
  const own = words.oven;
  const columns: Record<keyof Heat, WallColumn> = {
    celsius: { id: 'celsius', name: own.conventional, unit: own.celsiusUnit, weight: 'key' },
    fan: { id: 'fan', name: own.fan, unit: own.celsiusUnit, weight: 'key' },
    fahrenheit: { id: 'fahrenheit', name: own.fahrenheit, unit: own.fahrenheitUnit, weight: 'key' },
    fanFahrenheit: { id: 'fan-fahrenheit', name: own.fan, unit: own.fahrenheitUnit, weight: 'key' },
    gas: { id: 'gas', name: own.gas, unit: own.gasUnit, weight: 'key' },
  };
  const order = ORDER[locale];
  return {
    id: 'oven-dials',
    title: own.title,
    lead: own.lead,
    kitchenName: name,
    edition,
    body: {
      form: 'table',
      columns: order.map((key) => columns[key]),
      rows: GAS_MARKS.flatMap((mark) =>
        heatOfMark(mark).map((heat) => ({
          id: `gas-${mark}`,
          cells: order.map((key) => figureCell(heat[key])),
        })),
      ),
      secondGroupAt: null,
    },
    notes: [own.note],
    cautions: [{ code: 'oven-dials-vary', text: own.caution }],
    path: 'index.html',
    pathText: words.wherePage,
  };
}
