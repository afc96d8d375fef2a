import { useEffect, useState } from 'preact/hooks';

/**
 * Whether a fold is open, and how it is told that it was opened or shut. It opens by itself where
 * something inside needs attention; what has been opened is shut by hand alone.
 *
 * @param atFirst Whether it is open from the first, whatever is inside.
 */
export function useUnfolded(
  wrong: boolean,
  atFirst = false,
): readonly [open: boolean, set: (open: boolean) => void] {
  const [open, setOpen] = useState(wrong || atFirst);
  useEffect(() => {
    if (wrong) setOpen(true);
  }, [wrong]);
  return [open, setOpen];
}
