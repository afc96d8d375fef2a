import { fileName } from '../../calculators/sheet/file-name.ts';
import { SheetError } from '../../calculators/sheet/errors.ts';
import { LIMITS, type Engine } from '../../calculators/sheet/model.ts';
import { openText } from '../../calculators/sheet/rescue.ts';
import { adopt, type Store } from '../../calculators/sheet/store.ts';
import { writeDocument } from '../../calculators/sheet/validate.ts';
import { save } from '../browser/save.ts';
import { today } from '../browser/today.ts';
import { asTyped } from './as-typed.ts';
import { noteSaved } from './keeper.ts';

/** The text of a file, without reading one that cannot be a sheet. */
async function textOf(file: File): Promise<string> {
  if (file.size > LIMITS.text * 4) {
    throw new SheetError(
      'too-large',
      `“${file.name}” is ${(file.size / 1e6).toFixed(1)} MB; an engine sheet has at most ${(LIMITS.text / 1e6).toFixed(0)} MB. Choose a file that was saved by the engine sheet. Nothing was taken from it.`,
    );
  }
  return file.text();
}

/** Takes the engines of a file into the store that was shown as it was chosen, and says what came of it. */
export async function openFile(
  file: File,
  shown: Store,
  change: (edit: (store: Store) => Store) => void,
): Promise<string> {
  let source: string;
  try {
    source = await textOf(file);
  } catch (error) {
    if (error instanceof SheetError) return error.message;
    return `“${file.name}” could not be read from this device. Nothing was taken from it.`;
  }
  try {
    const { engines, lost } = openText(source);
    if (engines.length === 0) return `“${file.name}” holds no engine.`;
    change((before) => {
      const next = adopt(before, engines);
      // What came whole from a file is in one.
      if (lost.length === 0) noteSaved(next.engines.slice(before.engines.length), today());
      // Who went on typing while the file was read stays with the engine under the hand.
      return before === shown ? next : { ...next, active: before.active ?? next.active };
    });
    const names = engines.map(({ name }) => name).join(', ');
    const left = lost.length === 0 ? '' : ` Left out: ${lost.join(' ')}`;
    return `Taken from “${file.name}”: ${names}.${left}${asTyped(engines.at(-1))}`;
  } catch (error) {
    if (!(error instanceof SheetError)) throw error;
    return `“${file.name}”: ${error.message}`;
  }
}

/** Saves engines to a file, and gives its name. */
export function saveFile(engines: readonly Engine[]): string {
  const [only] = engines.length === 1 ? engines : [];
  const name = fileName(only ? 'engine-sheet' : 'engine-sheets', only?.name ?? '', today(), 'json');
  save(name, new Blob([writeDocument(engines)], { type: 'application/json' }));
  noteSaved(engines, today());
  return name;
}
