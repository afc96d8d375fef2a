import { readFileSync } from 'node:fs';
import starlight from '@astrojs/starlight';
import { defineConfig } from 'astro/config';

const articles = JSON.parse(readFileSync(new URL('../articles.json', import.meta.url), 'utf8'));

// All else as the generator comes.
export default defineConfig({
  integrations: [
    starlight({
      title: 'Gudgeon',
      sidebar: articles.map(({ slug }) => `articles/${slug}`),
    }),
  ],
});
