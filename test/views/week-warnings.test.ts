/** What a week's sheet says is to be checked: of which batter, and once. */
import { expect, it } from 'vitest';
import { readContent } from '../../src/read/content.ts';
import { ordersView } from '../../src/views/orders.ts';

it('names the batter that a warning is about, and says nothing twice', async () => {
  const { content } = await readContent('test/kitchens/good/us-bakery');
  if (content === null) throw new Error('the kitchen cannot be read');
  const all = ordersView(content).weeks.flatMap(({ warnings }) => warnings);
  const told = all.filter(({ code }) => code !== 'start-in-the-past').map(({ message }) => message);
  expect(told.length).toBeGreaterThan(0);
  expect(told.every((message) => content.recipes.some(({ name }) => message.startsWith(name)))).toBe(true);
  expect(new Set(told).size).toBe(told.length);
});
