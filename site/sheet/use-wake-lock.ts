import { useEffect, useState } from 'preact/hooks';

/** Whether this browser can keep the screen on. */
const can = (): boolean => 'wakeLock' in navigator;

export interface WakeLock {
  /** Whether it can be asked for at all; never so on the server. */
  readonly there: boolean;
  readonly wanted: boolean;
  readonly want: (wanted: boolean) => void;
  /** What became of it, where it was refused. */
  readonly said: string;
}

/**
 * Keeps the screen on for as long as it is wanted and this part of the page is open: asked for again
 * when the page comes back to the front, since browsers let go of it when it is hidden.
 */
export function useWakeLock(): WakeLock {
  const [there, setThere] = useState(false);
  const [wanted, want] = useState(false);
  const [said, say] = useState('');
  useEffect(() => setThere(can()), []);
  useEffect(() => {
    if (!wanted) {
      say('');
      return undefined;
    }
    let over = false;
    let held: WakeLockSentinel | undefined;
    const ask = async (): Promise<void> => {
      if (document.visibilityState !== 'visible') return;
      try {
        const lock = await navigator.wakeLock.request('screen');
        if (over) void lock.release();
        else held = lock;
        say('');
      } catch {
        say(
          'This device does not let the page keep the screen on just now, as where its battery is low.',
        );
      }
    };
    void ask();
    document.addEventListener('visibilitychange', ask);
    return () => {
      over = true;
      document.removeEventListener('visibilitychange', ask);
      void held?.release();
    };
  }, [wanted]);
  return { there, wanted, want, said };
}
