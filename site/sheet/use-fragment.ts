import { useEffect, useState } from 'preact/hooks';

/** What stands after the `#` of the address; nothing on the server. */
export function useFragment(): string {
  const [fragment, setFragment] = useState('');
  useEffect(() => {
    const look = (): void => setFragment(location.hash.slice(1));
    look();
    window.addEventListener('hashchange', look);
    return () => window.removeEventListener('hashchange', look);
  }, []);
  return fragment;
}
