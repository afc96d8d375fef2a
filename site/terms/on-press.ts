/** A press that is meant for the page itself, and not for another tab. */
const plain = (event: MouseEvent): boolean =>
  event.button === 0 && !(event.ctrlKey || event.metaKey || event.shiftKey || event.altKey);

// What tells a term is fetched when one is first pressed. Without it the link leads to the glossary.
document.addEventListener('click', (event) => {
  const link = (event.target as Element).closest<HTMLAnchorElement>('a.term');
  if (!link || !plain(event) || !('popover' in HTMLElement.prototype)) return;
  event.preventDefault();
  import('./explain.ts')
    .then(({ explain }) => explain(link))
    .catch(() => location.assign(link.href));
});
