import type { SheetDocument } from '../../calculators/sheet/model.ts';
import { parseJson, readDocument } from '../../calculators/sheet/validate.ts';

/** A document out of the text of a file that is whole: nothing of a damaged one is taken. */
export const parseDocument = (source: string): SheetDocument => readDocument(parseJson(source));
