import { useEffect, useState } from 'preact/hooks';
import type { Evaluation } from '../../calculators/frame/evaluate.ts';
import type { Filled } from '../sheet/for-calculator.ts';
import { keepsSheet } from '../opening/keeps-sheet.ts';

export interface OwnEngineProps {
  readonly evaluation: Evaluation;
  /** The engine in use, and what its sheet fills in. */
  readonly engine: Filled | undefined;
  readonly onDefaults: () => void;
  readonly onOwn: () => Promise<string | undefined>;
  /** Puts in the figures that the reader gave here the last time; nothing where there are none. */
  readonly onLast: (() => void) | undefined;
  /** Whose the answer is, where it has to be said. */
  readonly whose: string | undefined;
}

/** Whose the figures are, and presses that put in the reader’s: those of the sheet, or the last given here. */
export function OwnEngine(props: OwnEngineProps) {
  const { evaluation, engine, onDefaults, onOwn, onLast, whose } = props;
  const [kept, setKept] = useState(false);
  const [said, say] = useState('');
  useEffect(() => setKept(keepsSheet()), []);
  const { fields } = evaluation;
  const filled = fields.filter(({ origin }) => origin === 'sheet').length;
  // A link may name figures of an example too, which are not those of this sheet.
  const invented =
    engine?.own === false &&
    Object.keys(engine.texts).length > 0 &&
    fields.some(({ given, origin }) => given && origin === 'example');
  const sheet = engine?.name;
  const others = fields.some(({ origin }) => origin === 'link' || origin === 'example');
  const words = [
    whose,
    engine?.leftOut,
    sheet !== undefined && filled > 0
      ? `${filled === 1 ? 'One figure is' : `${String(filled)} figures are`} from your sheet: ${sheet}.`
      : undefined,
    sheet !== undefined && filled === 0 && invented
      ? `The figures are those of the invented engine of your sheet: ${sheet}.`
      : undefined,
  ].filter((line) => line !== undefined);
  // Offered until anything is given here, or by a link.
  const given = fields.some(({ origin }) => origin === 'yours' || origin === 'link');
  const fromSheet = sheet !== undefined && (filled > 0 || invented);
  return (
    <div class="whose-line">
      {words.length === 0 ? null : (
        <div class="whose-words">
          {words.map((line) => (
            <p key={line} class={line === whose ? 'whose' : undefined}>
              {line}
            </p>
          ))}
        </div>
      )}
      {kept && fromSheet ? (
        <button type="button" onClick={onDefaults}>
          Use the defaults
        </button>
      ) : kept && others && engine?.leftOut === undefined ? (
        <button type="button" onClick={() => void onOwn().then((answer) => say(answer ?? ''))}>
          Put my engine in
        </button>
      ) : null}
      {onLast === undefined || given ? null : (
        <button type="button" onClick={onLast}>
          My last figures
        </button>
      )}
      {said === '' ? null : <p role="status">{said}</p>}
    </div>
  );
}
