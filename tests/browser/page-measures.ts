import type { Page } from '@playwright/test';
import { contrastRatio, type Rgb } from './contrast.ts';

const smallestTarget = 44; // CSS px, WCAG 2.2, 2.5.5
const smallestContrast = 7; // WCAG 2.2, 1.4.6

/** What can be touched and is smaller than a finger. Links, terms and marks of sources within a text are exempt; a box counts with its label. */
export function smallTargets(page: Page, part = 'html') {
  return page.evaluate(
    ([least, within]) => {
      const isShown = (element: Element) => element.checkVisibility({ visibilityProperty: true });
      const isUnseen = (element: Element) => element.closest('.unseen') !== null;
      const size = (element: Element) => {
        const label = element.closest('label') ?? (element as HTMLInputElement).labels?.[0];
        const boxes = [
          element,
          ...(element.matches('[type="radio"], [type="checkbox"]') && label ? [label] : []),
        ];
        const rects = boxes.map((box) => box.getBoundingClientRect());
        return {
          width: Math.max(...rects.map((r) => r.width)),
          height: Math.max(...rects.map((r) => r.height)),
        };
      };
      return [
        ...document.querySelectorAll(
          'a[href], button, summary, select, textarea, input:not([type="hidden"])',
        ),
      ]
        .filter((element) => element.closest(within) && isShown(element) && !isUnseen(element))
        .filter(
          (element) =>
            !element.matches('.term, .from') &&
            (element.localName !== 'a' || getComputedStyle(element).display !== 'inline'),
        )
        .map((element) => ({ element, ...size(element) }))
        .filter(({ width, height }) => width < least - 0.01 || height < least - 0.01)
        .map(
          ({ element, width, height }) =>
            `${element.outerHTML.slice(0, 90)} is ${width.toFixed(1)} × ${height.toFixed(1)}`,
        );
    },
    [smallestTarget, part] as const,
  );
}

export interface Words {
  words: string;
  ink: string;
  papers: string[];
}

/** Every run of words that can be seen, with its colour and the colours behind it, nearest first. */
export function wordsOn(page: Page): Promise<Words[]> {
  return page.evaluate(() => {
    const found: Words[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const element = node.parentElement!;
      const words = node.textContent!.trim();
      if (words === '' || !element.checkVisibility({ visibilityProperty: true, opacityProperty: true }))
        continue;
      if (element.closest('script, style, noscript, annotation, .unseen')) continue;
      const style = getComputedStyle(element);
      const papers: string[] = [];
      for (let behind: Element | null = element; behind; behind = behind.parentElement)
        papers.push(getComputedStyle(behind).backgroundColor);
      found.push({
        words: words.slice(0, 40),
        ink: element.closest('svg') ? style.fill : style.color,
        papers,
      });
    }
    return found;
  });
}

/** A solid colour, or undefined for one that lets everything through. A half-clear one is a fault of ours. */
export function solid(colour: string): Rgb | undefined {
  const parts = colour.match(/^rgba?\((\d+), (\d+), (\d+)(?:, ([\d.]+))?\)$/);
  if (!parts) throw new Error(`cannot read the colour ${colour}`);
  const [red, green, blue, alpha = 1] = parts
    .slice(1)
    .map((part) => (part === undefined ? undefined : Number(part)));
  if (alpha === 0) return undefined;
  if (alpha !== 1) throw new Error(`${colour} is half clear`);
  return [red!, green!, blue!];
}

export function faintWords(all: Words[]): string[] {
  return all.flatMap(({ words, ink, papers }) => {
    const paper = papers.map(solid).find((colour) => colour !== undefined);
    const front = solid(ink);
    if (!paper || !front) return [`“${words}” has no colour: ${ink} on ${papers.join(', ')}`];
    const ratio = contrastRatio(front, paper);
    return ratio < smallestContrast ? [`“${words}” ${ink} on ${paper.join(', ')}: ${ratio.toFixed(2)}`] : [];
  });
}
