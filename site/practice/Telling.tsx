interface Props {
  /** What the bench did last, as it stands there. */
  readonly done: string;
  /** What is heard of it, after a pause. */
  readonly said: string;
  /** What a gauge or a shank shows now. */
  readonly fit?: string;
}

/** What the bench tells: to be seen at once, and to be heard once. */
export function Telling({ done, said, fit }: Props) {
  return (
    <>
      {fit === undefined ? null : (
        <p class="fit" aria-hidden="true">
          {fit}
        </p>
      )}
      <p class="said" aria-hidden="true">
        {done}
      </p>
      <p class="spoken" role="status">
        {said}
      </p>
    </>
  );
}
