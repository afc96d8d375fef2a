interface Props {
  readonly id: string;
  readonly problem: string | undefined;
}

/** What is wrong with a typed text, beside its field. */
export const TextProblem = ({ id, problem }: Props) =>
  problem === undefined ? null : (
    <p class="field-problem" id={id}>
      <span aria-hidden="true">▲ </span>
      {problem}
    </p>
  );
