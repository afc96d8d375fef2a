import { defineCollection } from 'astro:content';
import { file, glob } from 'astro/loaders';
import { z } from 'astro/zod';
import { stages, type Stage } from '../calculators/frame/stages.ts';

const stage = z.enum(Object.keys(stages) as [Stage, ...Stage[]]);

/** Articles: one MDX file each; the file's name is its slug. */
const articles = defineCollection({
  loader: glob({ pattern: '*.mdx', base: './content/articles' }),
  schema: z.object({
    title: z.string(),
    /** One sentence: what the reader will know or be able to do. */
    purpose: z.string(),
    stage,
    /** Place within its stage. */
    order: z.number(),
    /** Where the figures and rules come from; unsourced ones say "common practice". */
    sources: z.array(z.string()).default([]),
  }),
});

/** Three questions on an article, with their answers in steps: the file's name is the article's slug. */
const questions = defineCollection({
  loader: glob({ pattern: '*.mdx', base: './content/questions' }),
});

/** The trade's terms, each with an address of its own on the glossary page. */
const glossary = defineCollection({
  loader: file('./content/glossary.yaml'),
  schema: z.object({
    term: z.string(),
    /** Other names for the same thing. */
    also: z.array(z.string()).default([]),
    meaning: z.string(),
    /** Ids of related terms. */
    see: z.array(z.string()).default([]),
  }),
});

export const collections = { articles, glossary, questions };
