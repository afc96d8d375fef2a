import { useEffect, useState } from 'preact/hooks';
import type { Converter } from '../../calculators/frame/parse.ts';

let loaded: Converter | undefined;

export interface ConverterState {
  readonly converter?: Converter;
  /** Set when the converter was needed and could not be fetched. */
  readonly failure?: string;
}

/** Fetches the converter the first time `needed` is true. */
export function useConverter(needed: boolean): ConverterState {
  const [state, setState] = useState<ConverterState>(() => (loaded ? { converter: loaded } : {}));
  useEffect(() => {
    if (!needed || state.converter || state.failure) return;
    import('../../calculators/frame/converter.ts').then(
      (module) => {
        loaded = module.converter;
        setState({ converter: module.converter });
      },
      () => {
        setState({
          failure:
            'The unit converter could not be fetched. Check the connection, or type the figure as a plain number in the unit shown beside the field.',
        });
      },
    );
  }, [needed, state]);
  return state;
}
