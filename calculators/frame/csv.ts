const cell = (text: string): string =>
  /[",\r\n]/u.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

/** Rows as comma-separated values. Source: RFC 4180, section 2. */
export const csv = (rows: readonly (readonly string[])[]): string =>
  rows.map((row) => row.map(cell).join(',')).join('\r\n') + '\r\n';
