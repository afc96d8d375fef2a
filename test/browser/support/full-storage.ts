/** Fills what the browser keeps for the site to its last letter. Runs in the page, so it stands alone. */
export function fillStorage(): void {
  let piece = 'x'.repeat(1_000_000);
  for (let n = 0; piece.length > 0;) {
    try {
      localStorage.setItem(`filler-${String(n)}`, piece);
      n += 1;
    } catch {
      piece = piece.slice(0, Math.floor(piece.length / 2));
    }
  }
}
