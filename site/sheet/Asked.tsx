import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import { lastAsked, type Asked as WasAsked } from '../../calculators/sheet/judge.ts';
import { dayWords } from '../../calculators/sheet/log.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import type { StepId } from '../../calculators/sheet/steps.ts';
import { Said } from './Said.tsx';

interface Props {
  readonly engine: Engine;
  readonly id: StepId;
  readonly lengths: LengthDisplay;
  /** What is asked for as it stands, where that is said here too. */
  readonly now?: readonly string[];
}

const titleOf = ({ asFound, on }: WasAsked): string => {
  const day = dayWords(on);
  if (asFound) return `What it asked for, as found${day === '' ? '' : ` on ${day}`}`;
  return day === '' ? 'What it asked for before' : `What it asked for on ${day}`;
};

/** What a step asks for now, and what it asked for last: an amount stays readable while it is turned. */
export function Asked({ engine, id, lengths, now = [] }: Props) {
  const asked = lastAsked(engine, id, lengths);
  return (
    <>
      <Said {...(asked && now.length > 0 ? { title: 'As it stands now' } : {})} sentences={now} />
      {asked ? <Said title={titleOf(asked)} sentences={asked.sentences} /> : null}
    </>
  );
}
