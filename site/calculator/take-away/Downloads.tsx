import { useRef, useState } from 'preact/hooks';
import type { AnyCalculator } from '../../../calculators/frame/types.ts';
import { whoseFile } from '../../../calculators/frame/whose-field.ts';
import { failureWords } from '../../opening/load-failure.ts';
import { save } from '../../browser/save.ts';
import type { Now } from '../state.ts';
import { memo } from '../../../calculators/picture/redraw/memo.ts';

interface Props {
  readonly calculator: AnyCalculator;
  /** Why nothing may be saved as it stands; nothing where it may. */
  readonly refused: string | undefined;
  readonly now: Now;
}

interface Offer {
  readonly label: string;
  readonly make: (
    pictures: readonly SVGSVGElement[],
  ) => Promise<readonly (readonly [string, Blob])[]>;
}

const numbered = (slug: string, index: number, end: string): string =>
  `${slug}${index === 0 ? '' : `-${index + 1}`}.${end}`;

function offersOf({ calculator, now }: Props): Offer[] {
  const { slug, downloads = [] } = calculator;
  return [
    ...downloads.map(({ name, label, type, make }): Offer => ({
      label,
      make: async () => {
        const { evaluation, lengths } = now();
        const note = whoseFile(evaluation.fields);
        const file = await make(evaluation.values as never, lengths, note);
        return [[name, new Blob([file as BlobPart], { type })]];
      },
    })),
    {
      label: 'Picture, SVG',
      make: async (pictures) => {
        const { svgFile } = await import('./picture-file.ts');
        const note = whoseFile(now().evaluation.fields);
        return pictures.map((picture, i) => [numbered(slug, i, 'svg'), svgFile(picture, note)]);
      },
    },
    {
      label: 'Picture, PNG',
      make: async (pictures) => {
        const { pngFile } = await import('./picture-file.ts');
        const note = whoseFile(now().evaluation.fields);
        return Promise.all(
          pictures.map(
            async (picture, i) => [numbered(slug, i, 'png'), await pngFile(picture, note)] as const,
          ),
        );
      },
    },
    {
      label: 'Figures, CSV',
      make: async () => {
        const { csvSummary } = await import('../../../calculators/frame/copies.ts');
        const figures = csvSummary(calculator, now().evaluation);
        return [[`${slug}.csv`, new Blob([figures], { type: 'text/csv' })]];
      },
    },
  ];
}

function Files(props: Props) {
  const [state, setState] = useState('');
  const place = useRef<HTMLDivElement>(null);
  const { refused } = props;

  const make = async (offer: Offer): Promise<void> => {
    setState('Making the file …');
    try {
      const pictures = place.current?.closest('.calc')?.querySelectorAll<SVGSVGElement>('svg.plot');
      const files = await offer.make([...(pictures ?? [])]);
      for (const [name, content] of files) save(name, content);
      setState(`Saved: ${files.map(([name]) => name).join(', ')}.`);
    } catch (error) {
      setState(`The file was not made. ${failureWords(error)}`);
    }
  };

  return (
    <details class="act">
      <summary>Save as …</summary>
      <div class="share" role="group" aria-label="Save as a file" ref={place}>
        {offersOf(props).map((offer) => (
          <button
            key={offer.label}
            type="button"
            disabled={refused !== undefined}
            onClick={() => void make(offer)}
          >
            {offer.label}
          </button>
        ))}
        <p class="share-state" role="status">
          {refused ?? state}
        </p>
      </div>
    </details>
  );
}

/** Files made from the state, only when asked for. */
export const Downloads = memo(Files);
