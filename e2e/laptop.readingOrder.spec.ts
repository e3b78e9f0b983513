import type { Page } from '@playwright/test';
import { expect, expectAccessible, test } from './evenfall.js';
import { type RoundPlace, walkRound } from './roundWalk.js';

/** What is known of her stands in the invented clinic (packages/server/src/demo/wholeRounds.ts). */
const KNOWN = `
  - region "Known of this person":
    - list:
      - listitem: /Right arm. reads higher than the other/
      - listitem: /Usual cuff/`;

/**
 * In which order a voice reads each step: who it is, what is known of them before anything is measured, the question
 * before its fields, what was refused beside what it refuses, the number before what is said of it and before the way on.
 * WCAG 2.2, 1.3.2 Meaningful Sequence and 2.4.3 Focus Order.
 */
const ORDER: Readonly<Record<RoundPlace, string>> = {
  identity: `
  - heading "Is this the right person?" [level=1]
  - paragraph: /Let the person say who they are/
  - term: Name
  - definition: Marit Solvang
  - term: Birth date
  - definition: 21 Feb 1963
  - term: Number
  - definition: INV-0007
  - button "They match, and agree"
  - button "They do not match"`,
  'make ready': `
  - heading "Marit Solvang Make ready" [level=1]
  - paragraph: born 21 Feb 1963 no. INV-0007${KNOWN}
  - status: /The rest has begun/
  - group "What was not as it should be?":
    - checkbox "did not rest for five minutes"
  - button /All as it should be so far/`,
  'pulse ready': `
  - heading "Marit Solvang Pulse" [level=1]
  - paragraph: born 21 Feb 1963 no. INV-0007${KNOWN}
  - group "How":
    - radio "Count" [checked]
    - radio "Tap"
  - group "Window":
    - radio "15 s" [checked]
  - button "Start"`,
  'pulse running': `
  - heading "Marit Solvang Pulse" [level=1]
  - paragraph: Count for 15 seconds
  - timer: 11 seconds left
  - button "Interrupted"`,
  'pulse typing': `
  - heading "Marit Solvang Pulse" [level=1]
  - status: Stop. How many?
  - textbox "Number counted"
  - text: 15 s
  - group "Keypad":
    - button "1"
    - button "Done"`,
  'pulse refused': `
  - status: Stop. How many?
  - textbox "Number counted" [invalid]
  - alert: /Type the number that you counted/
  - group "Keypad"`,
  pulse: `
  - heading "Marit Solvang Pulse" [level=1]${KNOWN}
  - status:
    - paragraph: 84 /min
    - paragraph: Likely range over 80, under 88
  - figure:
    - img /21 counted in a window of 15 seconds/
  - region "Also noticed"
  - link "Go on"`,
  'breaths ready': `
  - heading "Marit Solvang Breaths" [level=1]${KNOWN}
  - group "How"
  - button "Start"`,
  'breaths tapping': `
  - heading "Marit Solvang Breaths" [level=1]
  - img "9 taps so far"
  - button /Tap here/
  - button "Stop"
  - button "Take back the last tap"`,
  breaths: `
  - heading "Marit Solvang Breaths" [level=1]
  - status:
    - paragraph: 16 /min
    - paragraph: /Likely range/
  - figure
  - status:
    - list:
      - listitem: /Breaths counted for [0-9.]+ s tend to come out too low/
  - link "Go on"`,
  'arm and cuff': `
  - heading "Marit Solvang Pressure" [level=1]${KNOWN}
  - group "Arm":
    - radio "Right" [checked]
  - group "The person"
  - group "Gauge"
  - textbox /Circumference/
  - paragraph: /For this arm. Adult/
  - combobox "Cuff used"
  - button "The cuff is on"`,
  rest: `
  - heading "Marit Solvang Pressure" [level=1]
  - paragraph: The person rests quietly. The cuff goes up when the rest is over.
  - status: /Rests. about [0-9] minutes left/
  - navigation "Meanwhile"
  - button "Do not wait …"`,
  feel: `
  - heading "Marit Solvang Pressure" [level=1]
  - paragraph:
    - text: Right upper arm, sitting
    - button "Change arm, posture or cuff"
  - paragraph: /Where is the pulse lost\\?/
  - textbox "Pulse lost at (mmHg)"
  - group "Numbers"
  - button "Let the cuff go"
  - button "Go on without feeling"`,
  'feel refused': `
  - textbox "Pulse lost at (mmHg)" [invalid]
  - alert: /Type where the pulse was lost/
  - group "Numbers"`,
  pump: `
  - heading "Marit Solvang Pressure" [level=1]${KNOWN}
  - paragraph: Pump up to 162
  - paragraph: /The pulse was lost at 132/
  - paragraph: Let down 2 to 3 mmHg a second, and listen.
  - paragraph:
    - timer
    - status: The cuff may go up now.
  - group "How the sounds are noted"
  - button "Pump up now"`,
  listen: `
  - heading "Marit Solvang Pressure" [level=1]
  - button /Valve opened · First sound · Last sound/
  - status: 3 touches so far
  - button "Read the gauge"`,
  'read back': `
  - heading "Marit Solvang Pressure" [level=1]
  - slider "First sound, on the gauge"
  - group "Which moment the gauge shows":
    - radio /Valve opened/
    - textbox "Valve opened (mmHg)"
    - radio /First sound/ [checked]
    - textbox "First sound (mmHg)"
    - radio /Last sound/
    - textbox "Last sound (mmHg)"
  - button "Keep this reading"`,
  'read back refused': `
  - group "Which moment the gauge shows":
    - textbox "Last sound (mmHg)" [invalid]
    - alert: /Last sound. not read yet/
  - button "Keep this reading"`,
  pressure: `
  - heading "Marit Solvang Pressure" [level=1]
  - status:
    - paragraph: 168/102 mmHg
  - status:
    - list:
      - listitem: /On the whole the cuff fell by 3.3 mmHg a second, faster than 3/
  - status:
    - list:
      - listitem: /1 reading with both numbers was taken/
  - paragraph: /Range from deflation and gauge alone/
  - figure:
    - img /First sound 168, Last sound 102/
  - button "Change the numbers"
  - paragraph:
    - timer: /The next reading in [0-9]+ seconds/
    - status
  - button "Take the next reading"
  - link "Go on to review"`,
  'next pressure': `
  - heading "Marit Solvang Pressure" [level=1]${KNOWN}
  - paragraph: Pump up to 200
  - button "Pump up now"`,
  'other signs': `
  - heading "Marit Solvang Other signs" [level=1]${KNOWN}
  - region "Others to take":
    - group:
      - heading "Temperature" [level=3]
      - textbox "Temperature (°C)"
      - group "Taken where"
      - button /Keep it . Temperature/`,
  review: `
  - heading "Marit Solvang Review" [level=1]${KNOWN}
  - region "What the round comes to":
    - heading "What the round comes to" [level=2]
  - checkbox "The person looks or feels unwell"
  - region "Make ready"
  - region "Pulse":
    - heading "Pulse" [level=2]
    - paragraph: 84 /min
    - group: /Evidence, change.*Pulse/
    - paragraph: Likely range over 80, under 88
  - region "Breaths":
    - heading "Breaths" [level=2]
    - paragraph: 16 /min
    - group: /Evidence, change.*Breaths/
    - list:
      - listitem: /vary too much/
  - region "Pressure":
    - heading "Pressure" [level=2]
    - paragraph: 168/102 mmHg
    - group: /Evidence, change.*168.102/
    - list:
      - listitem: /faster than 3/
  - region "Other signs":
    - paragraph: /Typed and not kept. Temperature/
  - heading "Sign" [level=2]
  - paragraph: "Signing as Wren Halloran (invented)"
  - link "Go on with the breaths"
  - button "Sign"`,
  signed: `
  - heading "Marit Solvang" [level=1]
  - region "Known of this person"
  - region "Chart":
    - heading "Chart" [level=2]
    - article /signed/:
      - heading /signed/ [level=3]
      - heading "What the round comes to" [level=4]
      - heading "Pulse" [level=4]
      - paragraph: 84 /min
      - figure
      - heading "Breaths" [level=4]
      - heading "Pressure" [level=4]
      - paragraph: 168/102 mmHg
      - figure`,
};

/** Steps that are come to by another page: the voice begins at its heading. */
const PAGES: readonly RoundPlace[] = ['identity', 'breaths ready', 'review', 'signed'];
/** Steps that are come to on the same page, by something that is gone then: the voice goes on from here. */
const PANELS: readonly RoundPlace[] = [
  'pulse running',
  'pulse',
  'breaths',
  'rest',
  'pressure',
  'next pressure',
];

const focused = (page: Page) => page.locator(':focus');

test('a round is read out in the order of the work, and the focus goes with it', async ({ page, demo }) => {
  test.setTimeout(240_000);
  await page.clock.install();
  const seen: RoundPlace[] = [];
  await walkRound(page, demo.address, 'Marit Solvang', async (place) => {
    seen.push(place);
    await test.step(place, async () => {
      await expect(page.getByRole('main')).toMatchAriaSnapshot(ORDER[place]);
      await expect(page.getByRole('heading', { level: 1 })).toHaveCount(1);
      if (PAGES.includes(place)) await expect(page.getByRole('heading', { level: 1 })).toBeFocused();
      else if (PANELS.includes(place)) await expect(focused(page)).toHaveClass('measure-stage');
      // Nothing that is done takes the place away from whoever is led by it.
      else await expect(page.getByRole('main').locator(':focus')).toHaveCount(1);
    });
  });
  expect(seen.toSorted()).toEqual(Object.keys(ORDER).toSorted());
});

test('what is refused is announced where it is; an answer, a form and a slip keep the place', async ({
  page,
  demo,
}) => {
  await page.goto(`${demo.address}/`);
  await page.getByLabel('Who is measuring?').selectOption({ label: 'Wren Halloran (invented)' });
  await page.getByRole('link', { name: /Orla Wickstead/ }).click();
  await page.getByRole('button', { name: 'Take a round' }).click();
  await page.getByRole('button', { name: 'They match, and agree' }).click();
  await page.getByRole('button', { name: 'All as it should be' }).click();
  await page.goto(page.url().replace(/\/round.*$/, '/round'));
  const pulse = page.getByRole('region', { name: 'Pulse' });
  await pulse.getByRole('button', { name: 'Not done …' }).click();
  // A keyboard goes on at the first reason.
  await expect(pulse.getByRole('radio').first()).toBeFocused();
  await page.keyboard.press('Tab');
  await expect(pulse.locator(':focus')).toHaveCount(1);
  await pulse.getByRole('button', { name: 'Keep this reason' }).click();
  await expect(pulse.getByText('Choose a reason.')).toBeVisible();
  await pulse.getByText('the person declined').click();
  await pulse.getByRole('button', { name: 'Keep this reason' }).click();
  await expect(pulse.getByText('Not done: the person declined')).toBeVisible();
  await expect(pulse).toBeFocused();

  await page.getByRole('button', { name: 'Sign', exact: true }).click();
  await expect(page.getByRole('alert')).toMatchAriaSnapshot(`
    - alert:
      - paragraph: "Not ready to sign:"
      - list:
        - listitem: /Breaths/
        - listitem: /Pressure/
  `);
  await expect(page.getByRole('button', { name: 'Sign', exact: true })).toBeFocused();
  await page.getByRole('button', { name: 'Discard this round …' }).click();
  await expect(page.getByRole('alert').last()).toContainText(/round/);
  // What keeps everything has the focus.
  await expect(page.getByRole('button', { name: 'Cancel', exact: true })).toBeFocused();
  await expectAccessible(page);
});
