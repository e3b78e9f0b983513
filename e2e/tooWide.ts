import type { Page } from '@playwright/test';

/** What is wider than the screen or than its own place, in words. A table may scroll by itself (WCAG 2.2, 1.4.10). */
export const tooWide = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const width = document.documentElement.clientWidth;
    const found: string[] = [];
    const of = (element: Element) =>
      `${element.tagName.toLowerCase()}.${element.getAttribute('class') ?? ''} “${(element.textContent ?? '').slice(0, 40)}”`;
    const whole = document.scrollingElement?.scrollWidth ?? 0;
    if (whole > width) found.push(`the page: ${whole} of ${width}`);
    for (const element of document.querySelectorAll('body *')) {
      const box = element.getBoundingClientRect();
      if (
        box.width === 0 ||
        // What a closed disclosure holds keeps the box of a screen that is gone.
        !element.checkVisibility() ||
        element.closest('svg svg, svg > *, .unseen, .skip, .bands, .trend-scroll, .away-figure-frame') !==
          null
      )
        continue;
      if (box.right > width + 1 || box.left < -1) found.push(`out of the screen: ${of(element)}`);
      // A closed list says the whole of what is chosen when it is opened.
      const isText = element.matches(
        'button, input, .button, .choice, p, h1, h2, h3, dt, dd, label, summary, pre',
      );
      const isBlock = getComputedStyle(element).display !== 'inline';
      if (isText && isBlock && element.scrollWidth > element.clientWidth + 1 && element.clientWidth > 0)
        found.push(`cut: ${of(element)}`);
    }
    return found;
  });
