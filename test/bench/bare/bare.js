// The least that a page can do with a key and with a drag: what the machine itself takes.
const input = document.querySelector('input');
const output = document.querySelector('output');
const handle = document.querySelector('g');
const path = document.querySelector('path');
let count = 1;

input.addEventListener('keydown', (event) => {
  if (!event.key.startsWith('Arrow')) return;
  event.preventDefault();
  count += event.key === 'ArrowUp' ? 1 : -1;
  input.value = String(count);
  output.textContent = String(count);
});
handle.addEventListener('pointermove', ({ clientX }) => {
  handle.setAttribute('transform', `translate(${clientX - 180} 0)`);
  path.setAttribute('d', `M0 0H${clientX}`);
});
