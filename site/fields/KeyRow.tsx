import { useLayoutEffect, useRef } from 'preact/hooks';
import type { UnitName } from '../../calculators/frame/text/units.ts';
import { leaveFocus } from './leave-focus.ts';

interface Props {
  readonly box: HTMLInputElement;
  readonly unit: UnitName;
  /** Whether the box reads sums. */
  readonly sums?: boolean;
}

const SIGNS = ['−', '/'] as const;
const OF_SUMS = ['−', '+', '×', '/', '(', ')'] as const;
/** What a figure is typed in besides, by the unit of its field: as many as stand in one line of a phone. */
const OF_UNIT: Partial<Record<UnitName, readonly string[]>> = {
  mm: ['mm', 'in', 'thou'],
  m: ['m', 'ft'],
  deg: ['°', '′'],
  mm2: ['mm²', 'in²'],
  wire: ['AWG'],
  litre: ['ml', 'US gal', 'imp gal'],
  cc: ['ml', 'cu in'],
  ml: ['ml', 'cu in'],
  g: ['g', 'oz', 'lb'],
  kPa: ['kPa', 'psi', 'bar'],
  air: ['hPa', 'inHg'],
  degC: ['°C', '°F'],
  ohm: ['Ω', 'kΩ'],
  mohm: ['mΩ', 'Ω'],
  Mohm: ['MΩ', 'kΩ'],
  uF: ['µF', 'nF'],
  '%': ['%'],
  ratio: [':'],
};

/** Keys that a phone's pad of digits lacks, above it: signs, brackets and the units of the field. */
export function KeyRow({ box, unit, sums = true }: Props) {
  const row = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const screen = window.visualViewport;
    // Where a browser lays its keyboard over the page, the row is lifted above it.
    const lift = (): void => {
      const covered = screen ? innerHeight - screen.height - screen.offsetTop : 0;
      row.current?.style.setProperty('bottom', `${String(Math.max(0, covered))}px`);
    };
    lift();
    screen?.addEventListener('resize', lift);
    screen?.addEventListener('scroll', lift);
    return () => {
      screen?.removeEventListener('resize', lift);
      screen?.removeEventListener('scroll', lift);
    };
  }, []);

  // The box stood in sight before this row came to lie on it.
  useLayoutEffect(() => box.scrollIntoView({ block: 'nearest' }), [box]);

  const press = (key: string): void => {
    const { selectionStart: from, selectionEnd: to, value } = box;
    box.setRangeText(key, from ?? value.length, to ?? value.length, 'end');
    box.dispatchEvent(new InputEvent('input', { bubbles: true }));
  };

  return (
    <div class="key-row" role="toolbar" aria-label="More keys" ref={row}>
      {[...(sums ? OF_SUMS : SIGNS), ...(OF_UNIT[unit] ?? [])].map((key) => (
        <button
          key={key}
          type="button"
          tabIndex={-1}
          onMouseDown={leaveFocus}
          onClick={() => press(/^\p{L}/u.test(key) ? ` ${key}` : key)}
        >
          {key}
        </button>
      ))}
    </div>
  );
}
