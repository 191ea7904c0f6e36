import { getCollection } from 'astro:content';
import { handbookSections } from './handbook-sections.ts';

const sections = Object.keys(handbookSections) as (keyof typeof handbookSections)[];

/** Every page of the handbook, from the first to the last. Two pages in one place fail the build. */
export async function readingOrder() {
  const pages = (await getCollection('handbook')).toSorted(
    (a, b) =>
      sections.indexOf(a.data.section) - sections.indexOf(b.data.section) || a.data.order - b.data.order,
  );
  const places = pages.map(({ data }) => `${data.section} ${data.order}`);
  const twice = places.find((place, index) => places.indexOf(place) !== index);
  if (twice !== undefined) throw new Error(`two pages of the handbook have the place ${twice}`);
  return pages;
}

/** The same by section; a section without pages is left out. */
export async function pagesBySection() {
  const pages = await readingOrder();
  return sections
    .map((section) => ({ section, pages: pages.filter(({ data }) => data.section === section) }))
    .filter((each) => each.pages.length > 0);
}
