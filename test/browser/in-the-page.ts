/** Questions asked of a page by code that runs inside it; each returns what is wrong, in words. */
import type { Page } from 'playwright-core';

/** Text cut off by its box, where nothing can be scrolled; what is typed into a field scrolls within it. */
export const cutOff = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('body :not(input)')]
      .filter((element) => {
        const { overflowX, clipPath, position } = getComputedStyle(element);
        const isUnseen = clipPath !== 'none' || (position === 'absolute' && element.clientWidth <= 1);
        return (
          !isUnseen &&
          (overflowX === 'hidden' || overflowX === 'clip') &&
          element.scrollWidth > element.clientWidth + 1
        );
      })
      .map(({ outerHTML }) => `cut off: ${outerHTML.slice(0, 160)}`),
  );

export const pageWidth = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth);

/**
 * The page under letters twice as large (WCAG 1.4.4), or spaced as far as readers may need (1.4.12: lines 1.5,
 * paragraphs 2, letters 0.12, words 0.16 of the letters' size). Labels inside drawings keep their places.
 */
export const withText = (page: Page, how: 'twice as large' | 'spaced' | 'as it is'): Promise<void> =>
  page.evaluate((asked) => {
    const sheet = new CSSStyleSheet();
    // What is only set when it is reached would not be asked.
    const all = '* { content-visibility: visible !important; } ';
    if (asked === 'as it is') sheet.replaceSync(all);
    if (asked === 'twice as large') sheet.replaceSync(`${all}html { font-size: 212.5% !important; }`);
    if (asked === 'spaced')
      sheet.replaceSync(
        `${all}:not(svg, svg *) { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; } p { margin-bottom: 2em !important; }`,
      );
    document.adoptedStyleSheets = [sheet];
  }, how);

/** What has gone when the system's own few colours replace the page's: drawings, edges of buttons, empty marks. */
export const goneInForcedColours = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const channels = (colour: string): number[] => (colour.match(/[\d.]+/g) ?? []).map(Number);
    const light = (colour: string): number => {
      const [r = 0, g = 0, b = 0] = channels(colour).map((part) => {
        const share = part / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const canvas = getComputedStyle(document.documentElement).backgroundColor;
    /** Whether a colour stands out from the page by 3 to 1. */
    const shows = (colour: string): boolean => {
      const [, , , alpha = 1] = channels(colour);
      if (!colour.startsWith('rgb') || alpha < 0.5) return false;
      const [a, b] = [light(colour), light(canvas)].sort((x, y) => y - x);
      return ((a ?? 0) + 0.05) / ((b ?? 0) + 0.05) >= 3;
    };
    const isSeen = (element: Element): boolean => {
      const { width, height } = element.getBoundingClientRect();
      return (width > 2 || height > 2) && element.checkVisibility();
    };
    const tell = (what: string, element: Element): string => `${what}: ${element.outerHTML.slice(0, 200)}`;
    const faults: string[] = [];
    for (const shape of document.querySelectorAll(
      'svg :is(path, circle, rect, line, polygon, polyline, ellipse, text)',
    )) {
      const { stroke, fill } = getComputedStyle(shape);
      const isMark = shape.closest('.qr, [data-ground]') === null && stroke + fill !== 'nonenone';
      if (isMark && isSeen(shape) && !shows(stroke) && !shows(fill))
        faults.push(tell(`not drawn (${stroke}, ${fill})`, shape));
    }
    const hasEdge = (element: Element): boolean => {
      const style = getComputedStyle(element);
      const edges = ['Top', 'Right', 'Bottom', 'Left'].some(
        (side) =>
          Number.parseFloat(style[`border${side}Width` as 'borderTopWidth']) >= 1 &&
          shows(style[`border${side}Color` as 'borderTopColor']),
      );
      return edges || shows(style.backgroundColor) || style.textDecorationLine.includes('underline');
    };
    for (const button of document.querySelectorAll('button, .next, summary')) {
      const isMarked = button.tagName === 'SUMMARY' || button.closest('.tin-shelf') !== null;
      if (isSeen(button) && !isMarked && !hasEdge(button)) faults.push(tell('no edge', button));
    }
    for (const empty of document.querySelectorAll('main :is(span, div, i, b):empty'))
      if (isSeen(empty) && !empty.hasAttribute('role') && !hasEdge(empty))
        faults.push(tell('no mark', empty));
    return faults;
  });

/** Everything that takes the keyboard, and shows no sign of it, or an outline that hardly differs from the page. */
export const withoutFocusSign = (page: Page): Promise<{ count: number; faults: string[] }> =>
  page.evaluate(() => {
    const all = [
      ...document.querySelectorAll<HTMLElement>('a[href], button, input, select, summary, [tabindex="0"]'),
    ].filter(
      (element) => element.checkVisibility({ visibilityProperty: true }) && !element.matches(':disabled'),
    );
    const faults = all.flatMap((element) => {
      element.focus({ preventScroll: true, focusVisible: true } as FocusOptions);
      if (document.activeElement !== element) return [`takes no focus: ${element.outerHTML.slice(0, 160)}`];
      const { outlineStyle, outlineWidth, outlineColor } = getComputedStyle(element);
      const isShown =
        outlineStyle !== 'none' &&
        Number.parseFloat(outlineWidth) >= 2 &&
        outlineColor !== 'rgba(0, 0, 0, 0)' &&
        outlineColor !== getComputedStyle(document.documentElement).backgroundColor;
      return isShown ? [] : [`no outline: ${element.outerHTML.slice(0, 160)}`];
    });
    (document.activeElement as HTMLElement | null)?.blur();
    return { count: all.length, faults };
  });

/** What moves by itself or glides, for those who asked for less motion. */
export const moving = (page: Page): Promise<string[]> =>
  page.evaluate(() => [
    ...(getComputedStyle(document.documentElement).scrollBehavior === 'auto' ? [] : ['the page glides']),
    ...[...document.querySelectorAll('body, body *')]
      .filter((element) => {
        const { transitionDuration, animationName } = getComputedStyle(element);
        return animationName !== 'none' || !/^0s(, 0s)*$/.test(transitionDuration);
      })
      .map(({ outerHTML }) => `moves: ${outerHTML.slice(0, 160)}`),
  ]);
