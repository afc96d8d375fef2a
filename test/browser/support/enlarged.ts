import type { Page } from 'playwright-core';

/** The text spacing that a reader may set, of WCAG 2.2, criterion 1.4.12. */
const SPACING = `
  * { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important }
  p { margin-bottom: 2em !important }
`;

/** Sets letters, words, lines and paragraphs apart, as a reader's own style sheet does. */
export const spaceText = (page: Page): Promise<void> =>
  page.evaluate((css) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(css);
    document.adoptedStyleSheets = [sheet];
  }, SPACING);

export const textAsIs = (page: Page): Promise<void> =>
  page.evaluate(() => {
    document.adoptedStyleSheets = [];
    document.documentElement.style.fontSize = '';
  });

/** Text of twice the size, as a reader sets it in the browser. */
export const doubleText = (page: Page): Promise<void> =>
  page.evaluate(() => {
    document.documentElement.style.fontSize = '200%';
  });

/** The innermost things that make the page scroll sideways; none where it does not. */
export const tooWide = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const { clientWidth, scrollWidth } = document.documentElement;
    if (scrollWidth <= clientWidth) return [];
    const out = [...document.querySelectorAll('main *, header *, footer *')].filter((element) => {
      if (element.closest('svg') !== null && element.localName !== 'svg') return false;
      if (element.getBoundingClientRect().right <= clientWidth + 0.5) return false;
      for (let up = element.parentElement; up; up = up.parentElement) {
        if (/auto|scroll|hidden|clip/.test(getComputedStyle(up).overflowX)) return false;
      }
      return true;
    });
    const inner = out.filter((one) => !out.some((other) => other !== one && one.contains(other)));
    return [
      `${String(scrollWidth)} of ${String(clientWidth)}`,
      ...inner.slice(0, 5).map((element) => element.outerHTML.slice(0, 160)),
    ];
  });
