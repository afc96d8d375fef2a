import { nameProblem } from '../../calculators/sheet/text-problems.ts';
import { enter } from '../../calculators/sheet/enter.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { TextProblem } from './TextProblem.tsx';
import { useTyped } from './typed.ts';

interface Props {
  readonly engine: Engine;
  readonly edit: (edit: (engine: Engine) => Engine) => void;
}

const box = { kind: 'name' } as const;

/** The engine's name, as it is now in whichever tab it was typed. */
export function NameBox({ engine, edit }: Props) {
  const [text, keep] = useTyped(engine, box, engine.name);
  const problem = nameProblem(text);
  return (
    <div class={problem === undefined ? undefined : 'field-wrong'}>
      <label>
        Name
        <input
          type="text"
          autocomplete="off"
          value={text}
          aria-invalid={problem === undefined ? undefined : 'true'}
          aria-describedby={problem === undefined ? undefined : 'name-problem'}
          onInput={(event) => {
            const { value } = event.currentTarget;
            keep(value, nameProblem(value) === undefined ? value.trim() : undefined);
            edit((now) => enter(now, box, value, { lengths: 'mm' }));
          }}
        />
      </label>
      <TextProblem id="name-problem" problem={problem} />
    </div>
  );
}
