import { notesProblem } from '../../calculators/sheet/text-problems.ts';
import { enter } from '../../calculators/sheet/enter.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { TextProblem } from './TextProblem.tsx';
import { useTyped } from './typed.ts';

interface Props {
  readonly engine: Engine;
  readonly edit: (edit: (engine: Engine) => Engine) => void;
}

const box = { kind: 'notes' } as const;

/** The builder's own notes, as they are now in whichever tab they were typed. */
export function NotesBox({ engine, edit }: Props) {
  const [text, keep] = useTyped(engine, box, engine.notes);
  const problem = notesProblem(text);
  return (
    <div class={problem === undefined ? undefined : 'field-wrong'}>
      <label class="notes">
        Notes
        <textarea
          rows={4}
          value={text}
          aria-invalid={problem === undefined ? undefined : 'true'}
          aria-describedby={problem === undefined ? undefined : 'notes-problem'}
          onInput={(event) => {
            const { value } = event.currentTarget;
            keep(value, notesProblem(value) === undefined ? value : undefined);
            edit((now) => enter(now, box, value, { lengths: 'mm' }));
          }}
        />
      </label>
      <TextProblem id="notes-problem" problem={problem} />
    </div>
  );
}
