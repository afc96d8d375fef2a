// Reads a JSON list of HTML texts and writes the list of the same texts as Markdown. Equations stay
// MathML, which Markdown lets through as it is.
import { text } from 'node:stream/consumers';
import { toHtml } from 'hast-util-to-html';
import rehypeParse from 'rehype-parse';
import rehypeRemark from 'rehype-remark';
import remarkGfm from 'remark-gfm';
import remarkStringify from 'remark-stringify';
import { unified } from 'unified';

const math = (_, node) => ({ type: 'html', value: toHtml(node) });
const turn = unified()
  .use(rehypeParse, { fragment: true })
  .use(rehypeRemark, { handlers: { math } })
  .use(remarkGfm)
  .use(remarkStringify);

const texts = JSON.parse(await text(process.stdin));
process.stdout.write(JSON.stringify(texts.map((html) => String(turn.processSync(html)))));
