import { useEffect, useState } from 'preact/hooks';
import type { Evaluation } from '../../calculators/frame/evaluate.ts';
import type { Filled } from '../sheet/for-calculator.ts';
import { keepsSheet } from '../browser/keeps-sheet.ts';

export interface OwnEngineProps {
  readonly evaluation: Evaluation;
  /** The engine in use, and what its sheet fills in. */
  readonly engine: Filled | undefined;
  readonly onDefaults: () => void;
  readonly onOwn: () => Promise<string | undefined>;
}

/** Whose engine the figures are of, where a sheet is kept, and one press that changes it. */
export function OwnEngine({ evaluation, engine, onDefaults, onOwn }: OwnEngineProps) {
  const [kept, setKept] = useState(false);
  const [said, say] = useState('');
  useEffect(() => setKept(keepsSheet()), []);
  if (!kept) return null;
  const { fields } = evaluation;
  const filled = fields.filter(({ origin }) => origin === 'sheet').length;
  // A link may name figures of an example too, which are not those of this sheet.
  const invented =
    engine?.own === false &&
    Object.keys(engine.texts).length > 0 &&
    fields.some(({ given, origin }) => given && origin === 'example');
  const sheet = engine?.name;
  const others = fields.some(({ origin }) => origin === 'link' || origin === 'example');
  return (
    <div class="own-engine">
      {engine?.leftOut === undefined ? null : <p>{engine.leftOut}</p>}
      {sheet !== undefined && filled > 0 ? (
        <p>
          {filled === 1 ? 'One figure is' : `${filled} figures are`} from your sheet: {sheet}.
        </p>
      ) : null}
      {sheet !== undefined && filled === 0 && invented ? (
        <p>The figures are those of the invented engine of your sheet: {sheet}.</p>
      ) : null}
      {sheet !== undefined && (filled > 0 || invented) ? (
        <button type="button" onClick={onDefaults}>
          Use the defaults instead
        </button>
      ) : others && engine?.leftOut === undefined ? (
        <button type="button" onClick={() => void onOwn().then((words) => say(words ?? ''))}>
          Put my engine in
        </button>
      ) : null}
      {said === '' ? null : <p role="status">{said}</p>}
    </div>
  );
}
