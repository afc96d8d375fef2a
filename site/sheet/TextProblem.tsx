import { Offers } from '../fields/Offers.tsx';
import { figureLinks } from './figure-links.tsx';

interface Props {
  readonly id: string;
  readonly problem: string | undefined;
  /** Types a text into the field, as a hand would. */
  readonly onType?: (text: string) => void;
}

/** What is wrong with a typed text, beside its field. */
export const TextProblem = ({ id, problem, onType }: Props) =>
  problem === undefined ? null : (
    <>
      <p class="field-problem" id={id}>
        <span aria-hidden="true">▲ </span>
        {figureLinks(problem)}
      </p>
      <Offers sentence={problem} onType={onType} />
    </>
  );
