declare module 'text-readability' {
  /** The part used here of a package without types. */
  const readability: { readonly fleschKincaidGrade: (text: string) => number };
  export default readability;
}
