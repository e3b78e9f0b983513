import { expect, expectAccessible, test } from './evenfall.js';

test('two ways of measuring are tried on the same simulated people beside the page, stopped, and compared in words', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/practice/plan`);
  await expect(page.getByText(/^SIMULATED: an invented person/)).toBeVisible();
  // Each field is named once, with the first way beside the second.
  const of = (way: string) => ({ getByLabel: (label: string) => page.getByLabel(`${label}: ${way}`) });
  const [first, second] = [of('First way'), of('Second way')];

  await test.step('what is wrong is said at its field, and nothing is begun', async () => {
    await second.getByLabel('Let down (mmHg/s)').fill('21');
    await page.getByRole('button', { name: 'Try both' }).click();
    await expect(second.getByLabel('Let down (mmHg/s)')).toHaveAttribute('aria-invalid', 'true');
    await expect(page.getByRole('progressbar')).toHaveCount(0);
    await expectAccessible(page);
  });

  await test.step('a long one is stopped at once', async () => {
    await second.getByLabel('Let down (mmHg/s)').fill('8');
    await page.getByLabel('People').selectOption('100000');
    await page.getByRole('button', { name: 'Try both' }).press('Enter');
    await expect(page.getByRole('progressbar')).toBeVisible();
    await page.getByRole('button', { name: 'Stop' }).press('Enter');
    await expect(page.getByText('Stopped. Nothing was worked out.')).toBeVisible();
  });

  await test.step('a short one says what came out, with the errors of the study', async () => {
    await first.getByLabel('Rest before (min)').fill('5');
    // Alike in everything but how fast the cuff falls.
    await second.getByLabel('Rest before (min)').fill('5');
    await second.getByLabel('Readings at a visit').fill('');
    await second.getByLabel('Pulse felt for first').selectOption('yes');
    await second.getByLabel('Readings rounded to ten (0 to 1)').fill('0');
    await expect(page.getByRole('listitem').filter({ hasText: /: first .*, second/ })).toHaveCount(3);
    await page.getByLabel('People').selectOption('1000');
    await page.getByRole('button', { name: 'Try both' }).press('Enter');
    await expect(page.getByRole('heading', { name: 'What came out' })).toBeVisible({ timeout: 60_000 });
    await expect(page.getByText('SIMULATED: 1000 simulated people.')).toBeVisible();
    // The page goes to what came out, and says when it no longer belongs to what stands in the form.
    await expect(page.getByRole('heading', { name: 'What came out' })).toBeFocused();
    await expect(page.getByText(/these results are of what was asked before/)).toHaveCount(0);
    await page.getByLabel('People').selectOption('10000');
    await expect(page.getByText(/these results are of what was asked before/)).toBeVisible();
    await page.getByLabel('People').selectOption('1000');
    await expect(page.getByText(/these results are of what was asked before/)).toHaveCount(0);
    // Physiology handbook 9: let down at 8 mmHg/s the systolic is read some 2.5 to 5 lower than at 2.5.
    const said = await page.getByText(/^Systolic: .*more than chance alone explains/).textContent();
    const apart = Number(/: ([\d.]+) mmHg higher with the first/.exec(said ?? '')?.[1]);
    expect(apart).toBeGreaterThan(1.5);
    expect(apart).toBeLessThan(8);
    await page.getByText('These numbers as a table').click();
    await expect(page.getByRole('table', { name: 'What both ways get wrong' })).toContainText('±');
    await expectAccessible(page);
  });
});
