import { useEffect, useState } from 'preact/hooks';
import {
  carburettorTasks,
  crankTasks,
  isCrankTask,
  tasks,
  type TaskName,
} from '../../calculators/practice/tasks.ts';
import { LAST_ENGINE, isEngineNumber } from '../../calculators/practice/engine.ts';
import type { Reckoning } from '../../calculators/practice/reckoning.ts';
import { fixed } from '../../calculators/frame/text/format.ts';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import '../browser/one-line.ts';
import { rememberedLengths, rememberLengths, watchLengths } from '../opening/preferences.ts';
import { readAddress, writeAddress } from './address.ts';
import { bests, keepBest } from './best.ts';
import { FloatBench, SlidesBench } from './CarburettorBench.tsx';
import { CrankBench } from './CrankBench.tsx';
import { keepActs } from './kept-acts.ts';
import { Lengths } from './lengths.ts';
import type { Places } from './places.ts';
import { Press } from './Press.tsx';
import { ReckoningView } from './ReckoningView.tsx';
import { length } from './words.ts';

interface Props {
  readonly places: Places;
}

interface Done {
  readonly reckoning: Reckoning;
  readonly spread: number | undefined;
}

const DONE_UNREAD =
  'What was to be done on the bench beforehand could not be read, so the engine stands as it came.';

/** The whole of the practice bench: which engine, which task, the work and the reckoning. */
export function App({ places }: Props) {
  const [asked, setAsked] = useState(() => readAddress(location.search));
  const [go, setGo] = useState(0);
  const [done, setDone] = useState<Done>();
  const [typed, setTyped] = useState(String(asked.engine));
  const [unread, sayUnread] = useState(false);
  const { engine, task, done: begun } = asked;
  const problem = `${asked.problem} ${unread ? DONE_UNREAD : ''}`.trim();

  useEffect(() => {
    const back = (): void => {
      const now = readAddress(location.search);
      setAsked(now);
      setTyped(String(now.engine));
      setDone(undefined);
      sayUnread(false);
      setGo((before) => before + 1);
    };
    addEventListener('popstate', back);
    return () => removeEventListener('popstate', back);
  }, []);

  const open = (next: { engine: number; task: TaskName }): void => {
    const anew = { ...next, done: '' };
    keepActs(anew, '');
    setAsked({ ...anew, problem: '' });
    sayUnread(false);
    setTyped(String(next.engine));
    setDone(undefined);
    setGo(go + 1);
    history.pushState(null, '', writeAddress(next));
  };
  const another = (): void => open({ engine: Math.floor(Math.random() * (LAST_ENGINE + 1)), task });
  const number = Number(typed);
  const wrong = typed.trim() === '' || !isEngineNumber(number);
  const finish = (reckoning: Reckoning, spread: number | undefined): void => {
    if (done === undefined && reckoning.right) keepBest(task, engine, reckoning.worst);
    setDone({ reckoning, spread });
  };
  const bench = {
    number: engine,
    begun,
    places,
    finished: done !== undefined,
    onFinish: finish,
    onUnread: () => sayUnread(true),
  };
  const [lengths, setLengths] = useState(rememberedLengths);
  useEffect(() => watchLengths(setLengths), []);
  const best = bests()[task];
  const unit = tasks[task].unit;

  return (
    <Lengths.Provider value={lengths}>
      <details class="fold chosen" open={problem !== ''}>
        <summary>
          <h2 class="task-title fold-name">
            Engine {engine}: {tasks[task].title}
          </h2>
          <span class="fold-holds no-print">another task, another engine, inches</span>
        </summary>
        <form
          class="choose no-print"
          onSubmit={(event) => {
            event.preventDefault();
            if (!wrong) open({ engine: number, task });
          }}
        >
          <label>
            <span>Task</span>
            <select
              name="task"
              value={task}
              onChange={(event) => open({ engine, task: event.currentTarget.value as TaskName })}
            >
              <optgroup label="Crank and points">
                {crankTasks.map((name) => (
                  <option key={name} value={name}>
                    {tasks[name].title}
                  </option>
                ))}
              </optgroup>
              <optgroup label="Carburettors">
                {carburettorTasks.map((name) => (
                  <option key={name} value={name}>
                    {tasks[name].title}
                  </option>
                ))}
              </optgroup>
            </select>
          </label>
          <label>
            <span>Engine number</span>
            <input
              type="text"
              inputMode="numeric"
              name="engine"
              autocomplete="off"
              value={typed}
              aria-invalid={wrong}
              aria-describedby={wrong ? 'engine-problem' : undefined}
              onInput={(event) => setTyped(event.currentTarget.value)}
            />
          </label>
          <label>
            <span>Lengths</span>
            <select
              name="lengths"
              value={lengths}
              onChange={(event) => rememberLengths(event.currentTarget.value as LengthDisplay)}
            >
              <option value="mm">Millimetres</option>
              <option value="in">Inches</option>
            </select>
          </label>
          <button class="press" type="submit">
            Fetch it
          </button>
          <Press onPress={another}>Any engine</Press>
          <p
            id="engine-problem"
            class="field-problem"
            role="alert"
            hidden={!wrong && problem === ''}
          >
            {wrong
              ? `An engine is a whole number from 0 to ${LAST_ENGINE}. The bench still holds engine ${engine}.`
              : problem}
          </p>
        </form>
      </details>
      {done && (
        <ReckoningView
          task={task}
          number={engine}
          reckoning={done.reckoning}
          spread={done.spread}
          places={places}
          onAgain={() => open({ engine, task })}
          onAnother={another}
        />
      )}
      {task === 'slides' && <SlidesBench key={`${engine} slides ${go}`} {...bench} />}
      {task === 'float' && <FloatBench key={`${engine} float ${go}`} {...bench} />}
      {isCrankTask(task) && <CrankBench key={`${engine} ${task} ${go}`} task={task} {...bench} />}
      {best && (
        <p class="best no-print">
          Right so far in this browser: {best.right} {best.right === 1 ? 'time' : 'times'}
          {unit !== 'none' &&
            `, nearest ${unit === 'deg' ? `${fixed(best.worst, 2)}°` : length(best.worst, lengths)} on engine ${best.engine}`}
          .
        </p>
      )}
    </Lengths.Provider>
  );
}
