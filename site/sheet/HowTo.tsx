import type { Step } from '../../calculators/sheet/steps.ts';

/** What to do at a step, one act after another. */
export function HowTo({ step: { how } }: { readonly step: Step }) {
  if (how.length === 1) return <p>{how[0]}</p>;
  return (
    <ol class="task-how">
      {how.map((act) => (
        <li key={act}>{act}</li>
      ))}
    </ol>
  );
}
