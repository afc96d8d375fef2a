import type { ComponentChildren } from 'preact';
import { unitTypedAt } from '../../calculators/sheet/box-specs.ts';
import { KeyRow } from '../fields/KeyRow.tsx';
import { useTouchedBox } from '../fields/use-touched-box.ts';

/** The boxes of the sheet, with the keys that a phone's pad lacks wherever a figure is typed. */
export function SheetKeys({ children }: { readonly children: ComponentChildren }) {
  const [box, watch] = useTouchedBox<HTMLDivElement>();
  const unit = box && unitTypedAt(box.name);
  return (
    <div {...watch}>
      {children}
      {box && unit ? <KeyRow box={box} unit={unit} /> : null}
    </div>
  );
}
