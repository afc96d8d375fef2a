import { useState } from 'preact/hooks';
import type { AnyCalculator, AnyValues, Download } from '../../calculators/frame/types.ts';

interface Props {
  readonly calculator: AnyCalculator;
  readonly values: AnyValues;
  /** Whether there is a result to save. */
  readonly ready: boolean;
}

function save(name: string, type: string, content: string | Uint8Array): void {
  const blob = new Blob([content as BlobPart], { type });
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
}

/** Files made from the state, only when asked for. */
export function Downloads({ calculator, values, ready }: Props) {
  const [state, setState] = useState('');
  const downloads = (calculator.downloads ?? []) as readonly Download[];
  if (downloads.length === 0) return null;
  const make = async (download: Download): Promise<void> => {
    setState(`Making ${download.name} …`);
    try {
      save(download.name, download.type, await download.make(values as never));
      setState(`${download.name} saved.`);
    } catch (error) {
      setState(
        error instanceof Error
          ? `${download.name} was not made. ${error.message}`
          : `${download.name} was not made.`,
      );
    }
  };
  return (
    <div class="share" role="group" aria-label="Save as a file">
      <span class="share-title">Save as a file</span>
      {downloads.map((download) => (
        <button
          key={download.name}
          type="button"
          disabled={!ready}
          onClick={() => void make(download)}
        >
          {download.label}
        </button>
      ))}
      <p class="share-state" role="status">
        {ready ? state : 'There is nothing to save until the figures above are put right.'}
      </p>
    </div>
  );
}
