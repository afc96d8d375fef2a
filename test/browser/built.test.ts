import { existsSync, globSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { parseHTML } from 'linkedom';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { demoTiming } from '../../calculators/demo/timing.ts';
import { foreignName } from '../drawing/foreign-names.ts';
import { standing } from '../outside/standing.ts';
import { alongside, outside, overlaps, pierced, strikes } from '../pictures/support/faults.ts';
import { sheetsOf } from '../pictures/support/marks.ts';
import { dist, documentOf, pageFiles } from './support/built.ts';
import { inlined, laxities } from './support/policy.ts';

const ORIGIN = 'http://here.test/';
/** Attributes that make the browser fetch something. */
const RESOURCES =
  'script[src], img[src], source[src], iframe[src], link[href], use[href], object[data]';
/** Relations that name an address and fetch nothing. */
const NAMING = /^(?:canonical|start|alternate|license|author)$/;
/** Attributes that hold ids of other elements. */
const REFERENCES = [
  'for',
  'aria-labelledby',
  'aria-describedby',
  'aria-controls',
  'aria-owns',
  'list',
  'form',
];

/** What a walk through a document stops at: its texts. */
const NODE_TEXT = 4;
/** A single thing, in the form of several. */
const ONE_OF_MANY =
  /(?<![\d.,:/×–-]|\d )1[ \u00A0](?:holes|sets|lobes|cylinders|turns|coils|jets|slides|grooves|teeth|readings|minutes|hours|seconds|days|checks|degrees|figures|steps|litres|points|times|ports|marks|lines|pieces|trials|distances|places|volts|ohms|metres|grams|things|entries)\b/g;

const policyOf = (document: Document): string =>
  document.querySelector('meta[http-equiv="content-security-policy" i]')?.getAttribute('content') ??
  '';

/** Attributes of HTML and SVG. In MathML `form` says where an operator stands, and refers to nothing. */
const attributesOf = (document: Document, name: string): string[] =>
  [...document.querySelectorAll(`[${name}]:not(math *)`)].map((element) =>
    element.getAttribute(name)!,
  );

/** The file that an address within the site leads to, seen from a page. */
function target(file: string, href: string): { file: string; hash: string } | undefined {
  const { origin, pathname, hash } = new URL(href, new URL(file, ORIGIN));
  if (`${origin}/` !== ORIGIN) return undefined;
  const path = decodeURIComponent(pathname.slice(1));
  return {
    file: path === '' || path.endsWith('/') ? `${path}index.html` : path,
    hash: decodeURIComponent(hash.slice(1)),
  };
}

/** The links of a page that lead nowhere. */
function dead(file: string, document: Document): string[] {
  const links = [...attributesOf(document, 'href'), ...attributesOf(document, 'src')];
  return links.filter((href) => {
    if (/^(?:mailto|data):/.test(href)) return false;
    const to = target(file, href);
    if (!to) return false;
    if (!existsSync(join(dist, to.file))) return true;
    if (to.hash === '') return false;
    const there = to.file === file ? document : documentOf(to.file);
    return there.getElementById(to.hash) === null;
  });
}

/** The file of the picture that goes with a link to the page, which is whole or starts at its folder. */
const linkPicture = (file: string, document: Document): string => {
  const content = document.querySelector('meta[property="og:image"]')!.getAttribute('content')!;
  const { pathname } = new URL(content, new URL(file, ORIGIN));
  return pathname.slice(pathname.indexOf('previews/'));
};

/** The resources of a page that come from another host. */
function foreign(file: string, document: Document): string[] {
  return [...document.querySelectorAll(RESOURCES)].flatMap((element) => {
    if (NAMING.test(element.getAttribute('rel') ?? '')) return [];
    const address = ['src', 'href', 'data']
      .map((name) => element.getAttribute(name))
      .find(Boolean)!;
    return target(file, address) || address.startsWith('data:') ? [] : [address];
  });
}

function repeatedIds(document: Document): string[] {
  const ids = attributesOf(document, 'id');
  return ids.filter((id, index) => ids.indexOf(id) !== index);
}

function danglingReferences(document: Document): string[] {
  return REFERENCES.flatMap((name) =>
    attributesOf(document, name)
      .flatMap((value) => value.split(/\s+/))
      .filter((id) => id !== '' && document.getElementById(id) === null)
      .map((id) => `${name}="${id}"`),
  );
}

describe.each(pageFiles)('%s', (file) => {
  const document = documentOf(file);

  it('is held by a strict content security policy, and keeps to it', () => {
    expect(laxities(policyOf(document))).toEqual([]);
    expect(inlined(document, policyOf(document))).toEqual([]);
  });

  it('links only to what exists, and fetches only from its own host', () => {
    expect(dead(file, document)).toEqual([]);
    expect(foreign(file, document)).toEqual([]);
  });

  it('has each id once, and every reference to an id leads to it', () => {
    expect(repeatedIds(document)).toEqual([]);
    expect(danglingReferences(document)).toEqual([]);
  });

  it('names itself: language, title, description, one heading', () => {
    expect(document.documentElement.getAttribute('lang')).toBe('en-GB');
    expect(document.title).toMatch(/\S/);
    const description = document.querySelector('meta[name="description"]')?.getAttribute('content');
    expect(description).toMatch(/\S.{19,}/);
    expect(document.querySelectorAll('h1')).toHaveLength(1);
    expect(document.querySelectorAll('main')).toHaveLength(1);
  });

  it('has the picture that it names for links to it', () => {
    expect(existsSync(join(dist, linkPicture(file, document)))).toBe(true);
  });

  it('lets the reader enlarge it', () => {
    const viewport = document.querySelector('meta[name="viewport"]')?.getAttribute('content');
    expect(viewport).toContain('width=device-width');
    expect(viewport).not.toMatch(/maximum-scale|user-scalable/);
  });

  it('has no space before a comma or a full stop', () => {
    const parts = [...document.querySelectorAll('main :is(p, li, dd, td, figcaption, noscript)')];
    const parted = parts.flatMap((part) =>
      [...part.textContent.matchAll(/.{0,30}[^\s.…]\s+[.,;](?=\s|$)/g)].map(([found]) => found),
    );
    expect(parted).toEqual([]);
  });

  it('has curly apostrophes and quotation marks, and no straight ones', () => {
    const walker = document.createTreeWalker(document.body, NODE_TEXT);
    const texts: string[] = ['aria-label', 'title', 'alt'].flatMap((name) =>
      attributesOf(document, name),
    );
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      if (!node.parentElement?.closest('script, style, pre, code'))
        texts.push(node.nodeValue ?? '');
    }
    const straight = texts.flatMap((text) => [...text.matchAll(/.{0,20}['"].{0,20}/g)]);
    expect(straight.map(([found]) => found)).toEqual([]);
  });

  it('speaks of one thing as one', () => {
    const parts = [
      ...document.querySelectorAll('main :is(p, li, dd, td, th, text, summary, figcaption)'),
    ];
    const said = parts.flatMap(({ textContent }) => [...textContent.matchAll(ONE_OF_MANY)]);
    expect(said.map(([found]) => found)).toEqual([]);
  });

  it('works from any folder: no address starts at the root of the host', () => {
    if (file === '404.html') return;
    const rooted = [...attributesOf(document, 'href'), ...attributesOf(document, 'src')];
    expect(rooted.filter((address) => address.startsWith('/'))).toEqual([]);
  });
});

it('no two pages have the same title', () => {
  const titles = pageFiles.map((file) => documentOf(file).title);
  expect(titles.filter((title, index) => titles.indexOf(title) !== index)).toEqual([]);
});

it('the home page shows the demo engine as it is timed', () => {
  const label = documentOf('index.html').querySelector('.mechanism')!.getAttribute('aria-label');
  expect(label).toContain(`piston ${demoTiming.travel.toFixed(2)} mm below`);
});

/** What works on no page without a script, or before it has come, and what stands there instead. */
const WITHOUT: Readonly<Record<string, readonly RegExp[]>> = {
  'calculators/wiring/index.html': [
    /Without JavaScript this page cannot calculate\. It shows the worked example of the invented demo engine/,
    /so it does not answer/,
  ],
  'articles/where-the-piston-is/index.html': [
    /Without JavaScript this figure shows the case of the text\. Nothing in it can be dragged/,
  ],
  'sheet/index.html': [
    /Without JavaScript the sheet cannot be kept here\. Print this page: it gives an empty sheet/,
    /Until it has, nothing typed here is kept\. What was kept on this device before is safe\./,
  ],
  'search/index.html': [
    /Searching needs JavaScript\./,
    /so it does not answer\. Fault finder, calculators, articles and glossary have lists/,
  ],
  'practice/index.html': [/Without JavaScript this engine cannot be turned/],
};

it.each(Object.entries(WITHOUT))(
  '%s says what does not answer without its script',
  (file, said) => {
    const [silent, waiting] = ['main .noscript', 'main .waiting'].map((words) =>
      [...documentOf(file).querySelectorAll(words)]
        .map(({ textContent }) => textContent.replaceAll(/\s+/g, ' '))
        .join(' '),
    );
    for (const words of said) expect(`${silent!} ${waiting!}`).toMatch(words);
  },
);

it('pictures and drawings of the build name no program that made them', async () => {
  for (const file of globSync('**/*.{svg,webmanifest}', { cwd: dist })) {
    expect(foreignName(readFileSync(join(dist, file), 'utf8')), file).toBeUndefined();
  }
  const pictures = globSync('**/*.png', { cwd: dist });
  expect(pictures.length).toBeGreaterThan(20);
  for (const file of pictures) {
    const { comments, exif, xmp } = await sharp(join(dist, file)).metadata();
    expect([comments, exif, xmp], file).toEqual([undefined, undefined, undefined]);
  }
});

it('the page of sources names none that anybody may alter or take down', () => {
  const document = documentOf('sources/index.html');
  const sources = [...document.querySelectorAll('.check-what, .check-source')];
  expect(sources.length).toBeGreaterThan(800);
  for (const { textContent } of sources) expect(standing(textContent), textContent).toBeUndefined();
});

it('every page can be reached from the home page', () => {
  const reached = new Set<string>();
  const visit = (file: string): void => {
    if (reached.has(file) || !pageFiles.includes(file)) return;
    reached.add(file);
    for (const href of attributesOf(documentOf(file), 'href')) {
      const to = target(file, href);
      if (to) visit(posix.normalize(to.file));
    }
  };
  visit('index.html');
  expect(pageFiles.filter((file) => file !== '404.html' && !reached.has(file))).toEqual([]);
});

it('style sheets fetch nothing from another host', () => {
  const sheets = globSync('**/*.css', { cwd: dist });
  expect(sheets).not.toEqual([]);
  const outward = /@import|url\(\s*['"]?(?:https?:)?\/\//;
  expect(sheets.filter((sheet) => outward.test(readFileSync(join(dist, sheet), 'utf8')))).toEqual(
    [],
  );
});

describe('these checks see', () => {
  const html = (body: string): Document =>
    parseHTML(`<!doctype html><html><body>${body}</body></html>`).document;
  const strict =
    "default-src 'none'; script-src 'self'; style-src 'self'; base-uri 'none'; form-action 'self'";

  it.each([
    '',
    strict.replace("script-src 'self'", "script-src 'self' 'unsafe-inline'"),
    strict.replace("style-src 'self'", "style-src 'self' 'unsafe-inline'"),
    strict.replace("script-src 'self'", "script-src 'self' https:"),
    strict.replace("script-src 'self'", "script-src 'self' cdn.example.org"),
    strict.replace("'none'", "'self'"),
  ])('a lax policy: %s', (policy) => {
    expect(laxities(policy)).not.toEqual([]);
  });

  it.each([
    '<p style="color: red">x</p>',
    '<p onclick="x()">x</p>',
    '<a href=" javascript:x()">x</a>',
    '<script>x()</script>',
    '<style>p {}</style>',
  ])('what the policy has to stop: %s', (body) => {
    expect(inlined(html(body), strict)).toHaveLength(1);
  });

  it('a strict policy and a page that keeps to it', () => {
    expect(laxities(strict)).toEqual([]);
    expect(inlined(html('<p>x</p><script src="a.js"></script>'), strict)).toEqual([]);
  });

  it.each(['<a href="nowhere/">x</a>', '<a href="#nowhere">x</a>', '<a href="/nowhere.svg">x</a>'])(
    'a dead link: %s',
    (body) => {
      expect(dead('index.html', html(body))).toHaveLength(1);
    },
  );

  it.each([
    '<img src="https://elsewhere.test/x.png">',
    '<script src="//elsewhere.test/x.js"></script>',
  ])('another host: %s', (body) => {
    expect(foreign('index.html', html(body))).toHaveLength(1);
  });

  it('an id used twice and a reference to none', () => {
    expect(repeatedIds(html('<p id="a"></p><p id="a"></p>'))).toEqual(['a']);
    expect(danglingReferences(html('<label for="b"></label>'))).toEqual(['for="b"']);
  });
});

describe('what browsers are sent', () => {
  const scripts = globSync('_astro/*.js', { cwd: dist });
  const text = (file: string): string => readFileSync(join(dist, file), 'utf8');

  it('holds no script that nothing uses, and the copy for offline use none either', () => {
    const all = [...pageFiles, ...scripts].map((file) => [file, text(file)] as const);
    const unused = scripts.filter(
      (script) =>
        !all.some(([file, code]) => file !== script && code.includes(posix.basename(script))),
    );
    expect(unused).toEqual([]);
    const kept = [...text('sw.js').matchAll(/"url":"\.\/(_astro\/[^"]+\.js)"/g)].map(
      ([, file]) => file!,
    );
    expect(kept.sort()).toEqual([...scripts].sort());
  });

  it('is told with the licence of every package that is in it', () => {
    const notices = documentOf('notices/index.html');
    const named = [...notices.querySelectorAll('#packages h2')].map((name) => name.textContent);
    for (const name of ['preact', 'd3-array', 'workbox-precaching', 'pdf-lib', 'minisearch']) {
      expect(named).toContain(name);
    }
    for (const details of notices.querySelectorAll('#packages details')) {
      expect(details.querySelector('pre')?.textContent.length).toBeGreaterThan(300);
    }
  });
});

it('the articles hang together: each next one names the one before it, from the first to the last', () => {
  const pages = pageFiles.filter((file) => /^articles\/[^/]+\/index\.html$/.test(file));
  const neighbour = (file: string, rel: string): string | undefined => {
    const href = documentOf(file)
      .querySelector(`.neighbours a[rel="${rel}"]`)
      ?.getAttribute('href');
    return href === undefined || href === null
      ? undefined
      : posix.join(posix.dirname(file), href, 'index.html');
  };
  const first = pages.filter((file) => neighbour(file, 'prev') === undefined);
  expect(first).toHaveLength(1);
  const seen: string[] = [];
  for (let at: string | undefined = first[0]; at !== undefined; at = neighbour(at, 'next')) {
    const after = neighbour(at, 'next');
    if (after !== undefined) expect(neighbour(after, 'prev')).toBe(at);
    seen.push(at);
  }
  expect(seen.toSorted()).toEqual(pages.toSorted());
});

describe('the pictures of every page as it is served', () => {
  it.each(pageFiles.filter((file) => file.startsWith('articles/')))(
    '%s: within their frames, no word on another or under a line',
    (file) => {
      const sheets = sheetsOf(readFileSync(join(dist, file), 'utf8'));
      expect(
        sheets.flatMap((sheet) => [
          ...outside(sheet),
          ...overlaps(sheet),
          ...strikes(sheet),
          ...pierced(sheet),
          ...alongside(sheet),
        ]),
      ).toEqual([]);
    },
  );
});
