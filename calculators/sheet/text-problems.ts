import { lengthOf, NAME, NOTES, orTooLong } from './box-places.ts';
import { LIMITS } from './model.ts';

/** What is wrong with a name; nothing where it can be taken. */
export function nameProblem(text: string): string | undefined {
  const length = lengthOf(text.trim());
  if (length === 0) return 'An engine needs a name, so that it can be told from the others.';
  if (length <= LIMITS.name) return undefined;
  return orTooLong(
    `The name has ${String(length)} characters, and there is room for ${String(LIMITS.name)}. Until it is shorter the engine goes without one.`,
    NAME,
    text,
  );
}

/** What is wrong with the notes; nothing where they can be taken. */
export function notesProblem(text: string): string | undefined {
  const length = lengthOf(text);
  if (length <= LIMITS.notes) return undefined;
  return orTooLong(
    `The notes have ${String(length)} characters, and the sheet has room for ${String(LIMITS.notes)}. They stay here as typed, but are neither printed nor sent until ${String(length - LIMITS.notes)} are taken out.`,
    NOTES,
    text,
  );
}
