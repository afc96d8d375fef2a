import { parseHTML } from 'linkedom';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { evaluate, knownKeys, seriesKeys } from '../../calculators/frame/evaluate.ts';
import { resultLines } from '../../calculators/frame/summary.ts';
import { flatten } from '../../calculators/frame/spreads.ts';
import { Live } from '../../site/calculator/Live.tsx';
import { FigureInText } from '../../site/figures/FigureInText.tsx';
import { calculators } from '../../site/all-calculators.ts';
import type { Field } from '../../calculators/frame/field/fields.ts';
import type { Input } from '../../calculators/frame/types.ts';
import { remarksOf } from '../../calculators/frame/whose.ts';
import { isAssumed, isExample } from '../../calculators/frame/whose-field.ts';

const reading = { lengths: 'mm' } as const;
/** Texts that some field takes. */
const MAYBE = ['', '0', '-1', '0.0001', '1e-300'];

describe.each(calculators.map((calculator) => [calculator.slug, calculator] as const))(
  '%s',
  (slug, calculator) => {
    const defaults = evaluate(calculator, {}, reading);

    it('lives in the folder of its slug and has words for people', () => {
      expect(slug).toMatch(/^[a-z][a-z-]+$/);
      expect(calculator.limits.length).toBeGreaterThan(0);
      expect(calculator.purpose).toMatch(/\.$/);
    });

    it('works with its defaults: results, no problems, every figure finite', () => {
      expect(defaults.problems).toEqual([]);
      expect(defaults.computed).toBe(true);
      const figures = flatten(defaults.results);
      expect(figures.size).toBeGreaterThan(0);
      for (const figure of figures.values()) expect(Number.isFinite(figure)).toBe(true);
      for (const { text } of resultLines(calculator, defaults, 'mm')) {
        expect(text).not.toMatch(/NaN|undefined|Infinity/);
      }
    });

    it('has one to three lead results or a table', () => {
      const leads = Object.values(calculator.results).filter((spec) => spec.lead);
      expect(leads.length).toBeLessThanOrEqual(3);
      expect(leads.length + Object.keys(calculator.tables ?? {}).length).toBeGreaterThan(0);
    });

    it('shows a column that leads in a line, and leaves its figures for programs in the table', () => {
      const html = render(<Live calculator={calculator} idPrefix="" />);
      const { document } = parseHTML(`<body>${html}</body>`);
      for (const [name, spec] of Object.entries(calculator.results)) {
        const value = defaults.results[name];
        if (!spec.lead || spec.table === undefined || !Array.isArray(value)) continue;
        const line = document.querySelector('.lead-column');
        expect(line?.textContent.split(', ')).toHaveLength(value.length);
        expect(line?.querySelector('data')).toBeNull();
        expect(document.querySelectorAll(`data[data-name="${name}-1"]`)).toHaveLength(1);
      }
    });

    it('calls no two inputs by one name: a refusal and a copy have nothing else to tell them by', () => {
      const named = Object.values<Input>(calculator.inputs).filter(({ kind }) => kind !== 'series');
      // Ways to give one figure, of which one is shown, stand in one group.
      const alike = named.flatMap((one, i) =>
        named
          .slice(i + 1)
          .filter(({ label }) => label === one.label)
          .filter((other) => !(one.group === other.group && one.when && other.when)),
      );
      expect(alike.map(({ label }) => label)).toEqual([]);
    });

    it('calls no two ± by one name', () => {
      const names = defaults.errorFields.map((field) =>
        field.kind === 'choice' ? field.label : field.spec.label,
      );
      expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
    });

    it('keeps its keys apart', () => {
      const all = Object.entries<Input>(calculator.inputs).flatMap(([key, input]) => [
        ...(input.kind === 'series' ? seriesKeys(key, input.most, input.first) : [key]),
        ...('error' in input && input.error !== undefined ? [`${key}-error`] : []),
      ]);
      expect(new Set(all).size).toBe(all.length);
      expect(knownKeys(calculator).size).toBe(all.length);
      for (const key of Object.values(calculator.fieldOf)) {
        expect(Object.keys(calculator.inputs)).toContain(key);
      }
    });

    it.each([
      ...['', '   ', 'abc', '12 stone', '1/0', '--4', '<script>alert(1)</script>', '5 furlongs'],
      ...['NaN', '1e300', '-1e300', '99999999999', '-99999999999', '0', '-1', '0.0001', '1e-300'],
    ])('answers %j in any field with words or figures, never with an exception or NaN', (text) => {
      for (const key of knownKeys(calculator)) {
        const evaluation = evaluate(calculator, { [key]: text }, reading);
        const figures = [...flatten(evaluation.results).values()];
        expect(
          figures.filter((figure) => !Number.isFinite(figure)),
          key,
        ).toEqual([]);
        const field = [...evaluation.fields, ...evaluation.errorFields].find(
          (candidate) => candidate.key === key,
        );
        if (field) expect(field.text).toBe(text);
        if (field && !MAYBE.includes(text.trim())) expect(field.problem, key).toBeDefined();
      }
    });

    it('renders on the server with its results, and without style attributes', () => {
      const html = render(<Live calculator={calculator} idPrefix="" />);
      expect(html).toMatch(/<data value="-?\d/);
      expect(html).not.toMatch(/\sstyle=/);
      expect(html).not.toMatch(/NaN|undefined|Infinity/);
      const ids = [...html.matchAll(/\sid="([^"]*)"/g)].map(([, id]) => id);
      expect(new Set(ids).size).toBe(ids.length);
    });

    it('marks its answer, its picture and its form, for checks from outside', () => {
      const html = render(<Live calculator={calculator} idPrefix="" />);
      for (const part of ['answer', 'picture', 'form']) {
        expect(html.split(`data-part="${part}"`)).toHaveLength(2);
      }
      const figure = render(
        <FigureInText
          {...{ calculator }}
          idPrefix=""
          set={{}}
          inputs={undefined}
          results={undefined}
        />,
      );
      const parts = [...figure.matchAll(/data-part="(\w+)"/g)].map(([, part]) => part);
      expect(parts).toEqual(['picture', 'answer', 'form']);
      expect(figure).toMatch(/^<div[^>]* data-part="picture"/);
    });

    it('marks in words each figure that nobody gave, field by field, until it is touched', () => {
      const html = render(<Live calculator={calculator} idPrefix="" />);
      for (const field of defaults.fields) {
        const marked = isExample(field) || isAssumed(field);
        expect(html.includes(`id="${field.key}-mark"`), field.key).toBe(marked);
        if (marked) expect(html).toMatch(new RegExp(`aria-describedby="[^"]*${field.key}-mark`));
      }
      expect(html).toContain('Worked example of an invented engine.');
      const figure = render(
        <FigureInText {...{ calculator }} idPrefix="" set={{}} inputs={[]} results={[]} />,
      );
      expect(figure).not.toContain('class="whose-figure"');
      expect(figure.split('Worked example.')).toHaveLength(2);
    });

    it('leaves no order in the page that the server sends', () => {
      const html = render(<Live calculator={calculator} idPrefix="" />);
      const plain = html.replaceAll(/<\/?one-line>/g, '');
      const said = [...plain.matchAll(/<li>([^<]*)<\/li>/g)].map(([, words]) => words!);
      const orders = remarksOf(calculator, defaults).filter((line) =>
        line.startsWith('In this example: '),
      );
      for (const line of orders) expect(said.join()).toContain(line.slice(0, 30));
      expect(html).not.toMatch(/not judged yet/i);
    });

    it('renders bad input with its sentence tied to the field, script never as markup', () => {
      const manner = (field: Field): string =>
        field.kind === 'choice' ? 'choice' : `${field.kind} ${String(field.spec.isError)}`;
      // One field of each manner: they are drawn by the same code.
      const shown = new Map(
        [...defaults.fields, ...defaults.errorFields].map((field) => [manner(field), field]),
      );
      expect(shown.size).toBeGreaterThan(0);
      for (const { key, kind } of shown.values()) {
        const html = render(
          <Live calculator={calculator} idPrefix="" set={{ [key]: '<script>alert(1)</script>' }} />,
        );
        expect(html, key).not.toContain('<script>');
        const { document } = parseHTML(`<body>${html}</body>`);
        const problem = document.getElementById(`${key}-problem`);
        expect(problem?.textContent, key).toMatch(
          kind === 'choice' ? /“<script>.*” is not a choice/ : /“<script>.*” cannot be read as/,
        );
        const tied = document.querySelector(`[aria-describedby~="${key}-problem"]`);
        expect(tied?.getAttribute('name') ?? tied?.id, key).toContain(key);
      }
    });

    it('shows of no result more digits than its ± allows, and one or two digits of that', () => {
      for (const lengths of ['mm', 'in'] as const) {
        const state = evaluate(calculator, {}, { lengths });
        for (const { name, text } of resultLines(calculator, state, lengths)) {
          const [, figure, spread] = /^[+−]?([\d.]+) ± ([\d.]+)/.exec(text) ?? [];
          if (figure === undefined || spread === undefined) continue;
          const decimals = (digits: string): number => digits.split('.')[1]?.length ?? 0;
          expect(decimals(figure), `${name}: ${text}`).toBe(decimals(spread));
          const digits = spread.replace('.', '').replace(/^0+/, '');
          expect(digits, `${name}: ${text}`).toMatch(/^(?:[12]?\d|[1-9]\d?0*)$/);
          if (decimals(spread) > 0) expect(digits.length, `${name}: ${text}`).toBeLessThan(3);
        }
      }
    });
  },
);
