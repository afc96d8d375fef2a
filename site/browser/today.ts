const two = (value: number): string => String(value).padStart(2, '0');

/** The day by the reader's own clock, such as 2026-03-21. */
export function today(): string {
  const now = new Date();
  return `${String(now.getFullYear()).padStart(4, '0')}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
