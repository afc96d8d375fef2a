import type { ComponentProps } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { failureWords } from '../opening/load-failure.ts';

type View = typeof import('./OneReading.tsx').OneReading;

/** One reading on a screen of its own; its code is fetched when one is first opened. */
export function OneAtATime(props: ComponentProps<View>) {
  const [shown, setShown] = useState<{ readonly OneReading: View }>();
  const [problem, setProblem] = useState('');
  useEffect(() => {
    import('./OneReading.tsx').then(
      ({ OneReading }) => setShown({ OneReading }),
      (error: unknown) => setProblem(failureWords(error)),
    );
  }, []);
  if (shown) return <shown.OneReading {...props} />;
  return (
    <p role="status">
      {problem} {problem === '' ? '' : <a href="#order-of-work">List of steps</a>}
    </p>
  );
}
