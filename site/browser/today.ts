const two = (value: number): string => String(value).padStart(2, '0');

/** The day by the reader's own clock, such as 2026-03-21. */
export function today(): string {
  const now = new Date();
  return `${String(now.getFullYear()).padStart(4, '0')}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

const BEGINNING = Date.UTC(2020, 0, 1);

/** Whole seconds since 2020 began, by the reader's own clock. */
export const secondsNow = (): number => Math.floor((Date.now() - BEGINNING) / 1000);
