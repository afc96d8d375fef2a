import { h } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { tasks, type TaskName } from '../../calculators/practice/tasks.ts';
import { displayUnit, fromShown, toShown } from '../../calculators/frame/text/units.ts';
import { useLengths } from './lengths.ts';
import { Press } from './Press.tsx';

interface Props {
  readonly task: TaskName;
  readonly finish: (spread: number | undefined, answer: number | undefined) => void;
}

/** The largest ± that is anything but a slip, and one as an example, in what is shown. */
const SPREADS = { deg: [20, 0.5], mm: [20, 0.5], in: [0.8, 0.02] } as const;
const NAMES = { deg: 'degrees of crank', mm: 'mm', in: 'inches' } as const;

/** A figure as typed, with a point or a comma; nothing for an empty box. */
const typed = (text: string): number | undefined =>
  text.trim() === '' ? undefined : Number(text.trim().replace(',', '.').replace('±', ''));

/** The reader's own ± or answer, and the way to the truth. */
export function Finish({ task, finish }: Props) {
  const [text, setText] = useState('');
  const [answer, setAnswer] = useState<number>();
  const [problem, setProblem] = useState('');
  const { unit, cylinders } = tasks[task];
  const shown = displayUnit(unit === 'none' ? 'deg' : unit, useLengths()) as keyof typeof SPREADS;
  const [largest, example] = SPREADS[shown];
  const was = useRef(shown);
  // What was typed in the lengths of before stays the same length.
  useEffect(() => {
    const spread = typed(text);
    if (was.current !== shown && spread !== undefined && Number.isFinite(spread)) {
      setText(String(Number(toShown(fromShown(spread, was.current), shown).toPrecision(4))));
    }
    was.current = shown;
    setProblem('');
  }, [shown]);
  const reckon = (): void => {
    const spread = typed(text);
    if (spread !== undefined && !(spread >= 0 && spread <= largest)) {
      setProblem(
        `A ± is a figure in ${NAMES[shown]} from 0 to ${largest}, without its unit, such as ${example}. Correct it, or leave the box empty.`,
      );
      return;
    }
    if (task === 'reading' && answer === undefined) {
      setProblem('Say first which of the four readings is bad.');
      return;
    }
    setProblem('');
    finish(spread === undefined ? undefined : fromShown(spread, shown), answer);
  };
  return (
    <section class="tool finish no-print">
      <h3>The reckoning</h3>
      {task === 'reading' ? (
        <fieldset class="answers">
          <legend>The bad reading is that of</legend>
          {Array.from({ length: cylinders }, (_, i) => (
            <label key={i}>
              <input
                type="radio"
                name="bad-reading"
                checked={answer === i}
                onChange={() => setAnswer(i)}
              />
              <span>cylinder {i + 1}</span>
            </label>
          ))}
        </fieldset>
      ) : (
        <label class="own-spread">
          <span>How sure are you? {h('one-line', {}, `± in ${NAMES[shown]}`)}</span>
          <input
            type="text"
            inputMode="decimal"
            name="spread"
            autocomplete="off"
            value={text}
            aria-invalid={problem !== ''}
            aria-describedby={problem === '' ? undefined : 'finish-problem'}
            onInput={(event) => {
              setText(event.currentTarget.value);
              setProblem('');
            }}
          />
        </label>
      )}
      <p class="field-problem" id="finish-problem" role="alert" hidden={problem === ''}>
        {problem}
      </p>
      <Press class="primary" onPress={reckon}>
        Show the truth
      </Press>
    </section>
  );
}
