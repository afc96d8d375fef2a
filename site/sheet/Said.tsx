/** Sentences, one under the other, under a heading where it needs one. */
export function Said({ title, sentences }: { title?: string; sentences: readonly string[] }) {
  if (sentences.length === 0) return null;
  return (
    <>
      {title === undefined ? null : <p class="said-title">{title}</p>}
      <ul class="remarks">
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </>
  );
}
