/** The order sheet and the labels of a plan, made in the page: byte for byte what the build makes of the saved order. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { printFiles } from '../../src/commands/make/print-files.ts';
import type { Content } from '../../src/domain/content.ts';
import { readContent } from '../../src/read/content.ts';
import { ordersView } from '../../src/views/orders.ts';
import { launchBrowser } from './browser.ts';
import { openedPlanner } from './planner-page.ts';

let browser: Browser;
let folder = '';

beforeAll(async () => {
  browser = await launchBrowser();
  folder = mkdtempSync(join(tmpdir(), 'tinwright-order-'));
});

afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** The demo with this one order, which its site does not show. */
async function kitchenWith(id: string, order: string): Promise<Content> {
  cpSync('content', folder, { recursive: true });
  rmSync(join(folder, 'orders'), { recursive: true });
  cpSync('content/orders', join(folder, 'orders'), {
    recursive: true,
    filter: (path) => !path.endsWith('.yaml'),
  });
  writeFileSync(join(folder, 'orders', `${id}.yaml`), order);
  const kitchen = readFileSync('content/kitchen.yaml', 'utf8');
  writeFileSync(
    join(folder, 'kitchen.yaml'),
    kitchen.replace('orders: { publish: yes }', 'orders: { publish: no }'),
  );
  const { content, problems } = await readContent(folder);
  if (content === null) throw new Error(JSON.stringify(problems));
  return {
    ...content,
    kitchen: { ...content.kitchen, paper: ['A4'] },
    houseStyles: [],
    // All that the sheet sends one to the shelf for; the site, which prints everything, has it too.
    printables: [
      { print: 'order-sheet' },
      { print: 'label' },
      { print: 'stack-sheet' },
      { print: 'recipe-card', recipeIds: ['vanilla-equal-weights'] },
      { print: 'finish-card', finishIds: ['raspberry-jam', 'vanilla-buttercream'], cardSizes: ['A6'] },
      { print: 'lining-template', tinIds: ['round-8', 'round-10'] },
    ],
  };
}

async function built(content: Content): Promise<Map<string, Buffer>> {
  const files = await printFiles({ content, charts: [], finishing: [], contentDir: folder });
  if (!files.ok) throw new Error(JSON.stringify(files.problems));
  return new Map(
    files.value.map(({ path, bytes }) => [path.split('/').at(-1) ?? '', Buffer.from(bytes ?? [])]),
  );
}

async function saved(page: Page, button: string): Promise<{ name: string; bytes: Buffer }> {
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: button, exact: true }).tap();
  const file = await coming;
  return { name: file.suggestedFilename(), bytes: readFileSync(await file.path()) };
}

const PLAN =
  '#recipe=vanilla-equal-weights&flavours=orange&tins=1+x+round-8%2C+1+x+round-10' +
  '&finishes=raspberry-jam--filling%2Cvanilla-buttercream--coating';

describe('a plan as an order', () => {
  it('prints its sheet, labels and cards with the bytes of the build, without a signal', async () => {
    const { page, faults } = await openedPlanner(browser, PLAN);
    await page.getByText('As an order', { exact: true }).tap();
    expect(await page.getByRole('button', { name: 'Order sheet' }).isDisabled()).toBe(true);
    await page.getByLabel('What it is called').fill('Two tiers: “orange” & jam');
    await page.getByLabel('Customer, as a code').fill('R-3001');
    await page.getByLabel('Handed over').fill('2026-11-28T14:00');
    await page.getByLabel('Where').selectOption('Delivered');
    await page.getByLabel('Portions wanted').fill('50');
    await page.getByLabel('Stacked').check();
    const order = await saved(page, 'Save as an order file');
    expect(order.name).toBe('two-tiers-orange-jam.yaml');
    const content = await kitchenWith('two-tiers-orange-jam', order.bytes.toString('utf8'));
    expect(content.orders[0]?.tiers.map(({ tinId }) => tinId)).toEqual(['round-10', 'round-8']);
    // What the plan costs on the page is what the order's own cost reckons for its ingredients.
    const [costed] = ordersView(content).orders;
    const ingredients = costed?.cost.rows.find(({ kind }) => kind === 'ingredients');
    expect(await page.locator('.cost b').textContent()).toBe(ingredients?.cost.text);
    const files = await built(content);
    const sheet = await saved(page, 'Order sheet');
    expect(sheet.bytes.equals(files.get(sheet.name) ?? Buffer.alloc(0)), sheet.name).toBe(true);
    await page.getByRole('button', { name: 'Labels and allergen cards' }).tap();
    const made = page.locator('.order [role="status"] button');
    await made.first().waitFor();
    const titles = await made.allTextContents();
    expect(titles.length).toBeGreaterThan(1);
    for (const title of titles) {
      const label = await saved(page, title);
      expect(label.bytes.equals(files.get(label.name) ?? Buffer.alloc(0)), label.name).toBe(true);
    }
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('is refused as the build refuses it, and says which cake has no label', async () => {
    const { page, faults } = await openedPlanner(browser, PLAN);
    await page.evaluate(() => {
      const { tinwrightContent } = window as unknown as {
        tinwrightContent: { ingredients: { id: string; allergens?: unknown }[] };
      };
      for (const item of tinwrightContent.ingredients) if (item.id === 'butter') delete item.allergens;
    });
    await page.getByText('As an order', { exact: true }).tap();
    await page.getByLabel('Customer, as a code').fill('R-3001');
    await page.getByLabel('Handed over').fill('2026-11-28T14:00');
    await page.getByRole('button', { name: 'Labels and allergen cards' }).tap();
    await page.locator('.order .wrong', { hasText: 'allergens' }).first().waitFor();
    expect(await page.locator('.order [role="status"] button').count()).toBe(0);
    await page.getByLabel('Customer, as a code').fill('a name with spaces');
    await page.getByRole('button', { name: 'Order sheet' }).tap();
    await page.locator('.order .wrong', { hasText: 'reference' }).first().waitFor();
    expect(faults).toEqual([]);
    await page.context().close();
  });
});
