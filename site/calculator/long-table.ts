/** Whether a table of so many columns and rows keeps a line for each row on a phone: as cards it would fill screens. */
export const isLongTable = (columns: number, rows: number): boolean => columns < 4 && rows > 6;
