import { useWakeLock } from './use-wake-lock.ts';

/** Keeps the screen on while the hands are at the engine. */
export function Awake() {
  const { there, wanted, want, said } = useWakeLock();
  if (!there) return null;
  return (
    <>
      <label class="option">
        <input
          type="checkbox"
          checked={wanted}
          onChange={(event) => want(event.currentTarget.checked)}
        />
        <span>Keep the screen on</span>
      </label>
      <p role="status">{said}</p>
    </>
  );
}
