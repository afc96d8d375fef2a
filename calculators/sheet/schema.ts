import { longestAt, NAME, NOTES } from './box-places.ts';
import { figureKeys, MOST_CYLINDERS, sheetFigures } from './figures.ts';
import { SITE_NAME } from '../frame/site-name.ts';
import type { LogEntry } from './log-entry.ts';
import { FORMAT, LIMITS, VERSION } from './model.ts';
import { order, steps } from './steps.ts';
import { units } from '../frame/text/units.ts';
import { ENTRY_KEYS, PATTERNS } from './validate.ts';

const count = { type: 'integer', minimum: 0, maximum: Number.MAX_SAFE_INTEGER };

/** A closed group: these members, all of them, perhaps some more, and no others. */
const group = (
  properties: Readonly<Record<string, unknown>>,
  mayHold: Readonly<Record<string, unknown>> = {},
): object => ({
  type: 'object',
  properties: { ...properties, ...mayHold },
  required: Object.keys(properties),
  additionalProperties: false,
});

const figures = Object.fromEntries(
  figureKeys.map((key) => {
    const { label, help, unit, min, max, whole } = sheetFigures[key];
    const { label: inUnit } = units[unit];
    return [
      key,
      {
        title: inUnit === '' ? label : `${label}, ${inUnit}`,
        description: help,
        type: whole ? 'integer' : 'number',
        minimum: min,
        maximum: max,
      },
    ];
  }),
);

const kinds = Object.keys(ENTRY_KEYS) as LogEntry['kind'][];
const written = { clock: count, on: { type: 'string', pattern: PATTERNS.on } };

/** An entry of the log of one of these kinds, which hold this beside it. */
const logged = (of: readonly LogEntry['kind'][], holds: Readonly<Record<string, unknown>>) =>
  group({ kind: { enum: of }, ...written, ...holds });

const kindsWith = (key: string): LogEntry['kind'][] =>
  kinds.filter((kind) => (ENTRY_KEYS[kind] as readonly string[]).includes(key));

const numberOf = (spec: { min: number; max: number; whole?: boolean }): object => ({
  type: spec.whole ? 'integer' : 'number',
  minimum: spec.min,
  maximum: spec.max,
});

const log = {
  description: 'All that was read and done, in the order of the engine’s clock.',
  type: 'array',
  maxItems: LIMITS.log,
  items: {
    anyOf: [
      ...order.flatMap((id) => {
        const { title, reading } = steps[id];
        if (!reading) return [];
        const holds = {
          step: { const: id },
          cylinder: { type: 'integer', minimum: 1, maximum: MOST_CYLINDERS },
          value: numberOf(reading),
        };
        return { title: `${title}: ${reading.label}`, ...logged(kindsWith('cylinder'), holds) };
      }),
      logged(['done', 'undone'], { step: { enum: order } }),
      ...figureKeys.map((key) =>
        logged(['figure'], {
          figure: { const: key },
          value: { anyOf: [numberOf(sheetFigures[key]), { type: 'null' }] },
        }),
      ),
      logged(['hours'], { value: { type: 'number', minimum: 0, maximum: LIMITS.hours } }),
      logged(['note'], { text: { type: 'string', minLength: 1, maxLength: LIMITS.entry } }),
      logged(kindsWith('line'), { line: { type: 'string', pattern: PATTERNS.line } }),
      logged(['anew'], {}),
    ],
  },
};

const readings = Object.fromEntries(
  order.map((id) => {
    const { title, reading } = steps[id];
    const entry = reading
      ? {
          anyOf: [
            {
              type: reading.whole ? 'integer' : 'number',
              minimum: reading.min,
              maximum: reading.max,
            },
            { type: 'null' },
          ],
        }
      : true;
    const entries = { type: 'array', maxItems: reading ? MOST_CYLINDERS : 0, items: entry };
    const description =
      reading === undefined
        ? 'Ticked when done.'
        : `${reading.label}, for ${reading.per.toLowerCase()} 1, 2, …; null where not read.`;
    return [
      id,
      {
        title,
        description,
        ...group(
          {
            found: entries,
            left: entries,
            done: { type: 'boolean' },
            checked: count,
            changed: count,
          },
          {
            again: {
              description: 'Clocks at which single cylinders were read again; 0 for the others.',
              type: 'array',
              maxItems: MOST_CYLINDERS,
              items: count,
            },
          },
        ),
      },
    ];
  }),
);

const engine = group({
  id: { type: 'string', pattern: PATTERNS.id },
  name: { type: 'string', minLength: 1, maxLength: LIMITS.name },
  invented: { description: 'True for an engine that does not exist.', type: 'boolean' },
  notes: { type: 'string', maxLength: LIMITS.notes },
  firingOrder: {
    description: 'Cylinder numbers in the order in which they fire.',
    type: 'array',
    maxItems: MOST_CYLINDERS,
    uniqueItems: true,
    items: { type: 'integer', minimum: 1, maximum: MOST_CYLINDERS },
  },
  figures: { type: 'object', properties: figures, additionalProperties: false },
  readings: { type: 'object', properties: readings, additionalProperties: false },
  kept: {
    description: 'Results sent from calculators.',
    type: 'array',
    maxItems: LIMITS.kept,
    items: group({
      label: { type: 'string', maxLength: LIMITS.line },
      text: { type: 'string', maxLength: LIMITS.line },
      calculator: { type: 'string', pattern: PATTERNS.calculator },
      query: { type: 'string', pattern: PATTERNS.query },
    }),
  },
  unread: {
    description: 'Texts typed that could not be read, by field; nothing stands at such a place.',
    type: 'object',
    maxProperties: LIMITS.unread,
    propertyNames: { pattern: PATTERNS.unread },
    properties: Object.fromEntries(
      [NAME, NOTES].map((place) => [place, { type: 'string', maxLength: longestAt(place) }]),
    ),
    additionalProperties: { type: 'string', maxLength: LIMITS.line },
  },
  log,
  archived: { description: 'True for an engine laid aside.', type: 'boolean' },
  clock: { description: 'Counts the changes made to readings.', ...count },
});

/** The JSON Schema of an engine sheet, made from the definitions that the page itself uses. */
export const engineSheetSchema = {
  $schema: 'http://json-schema.org/draft-07/schema#',
  title: `${SITE_NAME} engine sheet, version ${String(VERSION)}`,
  description:
    'Engines with their figures and the readings of the job. Lengths in mm, angles in degrees, volumes in cc, as each figure’s title says.',
  ...group({
    format: { const: FORMAT },
    version: { const: VERSION },
    engines: { type: 'array', maxItems: LIMITS.engines, items: engine },
  }),
};
