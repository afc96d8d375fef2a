import { h } from 'preact';

/** What a field is called, its number on the line of the word that it counts: “opening of slide 1”. */
export function FieldName({ label }: { readonly label: string }) {
  const [, before = '', counted] = /^(.* )?(\S+ \d+)$/.exec(label) ?? [];
  return counted === undefined ? (
    <>{label}</>
  ) : (
    <>
      {before}
      {h('one-line', {}, counted)}
    </>
  );
}
