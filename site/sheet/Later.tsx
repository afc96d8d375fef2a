import type { ComponentType } from 'preact';
import { useState } from 'preact/hooks';
import { failureWords } from '../opening/load-failure.ts';

interface Props<Given extends object> {
  readonly name: string;
  readonly load: () => Promise<ComponentType<Given>>;
  readonly given: Given;
}

/** A fold whose content is fetched when it is first opened. */
export function Later<Given extends object>({ name, load, given }: Props<Given>) {
  const [shown, setShown] = useState<{ readonly Content: ComponentType<Given> }>();
  const [problem, setProblem] = useState('');
  const open = async (): Promise<void> => {
    try {
      const Content = await load();
      setShown({ Content });
      setProblem('');
    } catch (error) {
      setProblem(failureWords(error));
    }
  };
  return (
    <details
      class="act"
      onToggle={(event) => {
        if (event.currentTarget.open && shown === undefined) void open();
      }}
    >
      <summary>{name}</summary>
      {shown ? <shown.Content {...given} /> : <p role="status">{problem}</p>}
    </details>
  );
}
