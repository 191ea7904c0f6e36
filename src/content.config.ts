import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';
import { handbookSections, originMarks } from './content/handbook-sections.ts';
import { sourceIds } from './content/sources.ts';

/** Where the facts of a page come from. */
const origins = z.array(z.enum(Object.keys(originMarks) as [keyof typeof originMarks])).min(1);

const handbook = defineCollection({
  loader: glob({ base: './src/content/handbook', pattern: '*.mdx' }),
  schema: z.strictObject({
    /** The heading of the page and its name in lists and links. */
    title: z.string().min(3).max(60),
    /** One sentence with the page’s answer, for search results and shared links. */
    description: z.string().min(30).max(200),
    /** The answer, in at most two sentences: the first thing on the page. */
    answer: z.string().min(40).max(400),
    /** Which part of the handbook the page belongs to. */
    section: z.enum(Object.keys(handbookSections) as [keyof typeof handbookSections]),
    /** Place within the section, counted from 1; no two pages share one. */
    order: z.int().positive(),
    /**
     * Questions as people type them that this page answers. Shown in small print and weighed in the search, so they hold
     * the words that the text itself avoids: “vacuum”, “sync”, “carbs”. No two pages claim one question.
     */
    asks: z.array(z.string().min(8).max(70)).default([]),
    /** When a person last read the whole page against its sources. */
    reviewed: z.coerce.date(),
    /** Ids of src/content/sources.ts, in the order of their numbers at the foot of the page. */
    sources: z.array(z.enum(sourceIds)).min(1),
    /** What kinds of facts the page holds; the foot says how each is marked. */
    origins,
  }),
});

export const collections = { handbook };
