import { readFileSync } from 'node:fs';
import { defineConfig } from 'vitepress';

const articles = JSON.parse(readFileSync(new URL('../../articles.json', import.meta.url), 'utf8'));

// All else as the generator comes.
export default defineConfig({
  title: 'Gudgeon',
  themeConfig: {
    sidebar: articles.map(({ slug, title }) => ({ text: title, link: `/articles/${slug}/` })),
  },
});
