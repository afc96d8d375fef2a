const COLUMNS = 3;
const LEAST_ROWS = 7;

/** A long table of three figures stays a table where others are stacked: as cards it has no end. */
export const isLongTable = (columns: number, rows: number): boolean =>
  columns === COLUMNS && rows >= LEAST_ROWS;
