import { render } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import { setFigure } from '../../calculators/sheet/set-figure.ts';
import { newEngine, type Engine } from '../../calculators/sheet/model.ts';
import { AS_SERVED } from '../browser/as-served.ts';
import { inTurn } from './in-turn.ts';
import { PrintSheet } from './PrintSheet.tsx';

interface Props {
  readonly engine: Engine | undefined;
  readonly lengths: LengthDisplay;
  readonly withLog: boolean;
}

/** What is printed while no engine is chosen: boxes for three cylinders, to be filled by pen. */
const blank = setFigure(newEngine('blank', '____________________'), 'cylinders', 3);

const Sheet = ({ engine, ...others }: Props) => (
  <PrintSheet engine={engine ?? blank} every={engine === undefined} {...others} />
);

const Served = (props: Props) => (
  <div>
    <Sheet {...props} />
  </div>
);

function Drawn(props: Props) {
  const { engine, lengths, withLog } = props;
  const place = useRef<HTMLDivElement>(null);
  const isServed = useRef(true);
  useLayoutEffect(() => {
    const paper = place.current!;
    isServed.current &&= engine === undefined && lengths === 'mm' && paper.hasChildNodes();
    if (isServed.current) return;
    const waits = new AbortController();
    const draw = (): void => {
      waits.abort();
      render(<Sheet {...props} />, paper);
    };
    waits.signal.addEventListener('abort', inTurn(draw));
    addEventListener('beforeprint', draw, { signal: waits.signal });
    return () => waits.abort();
  }, [engine, lengths, withLog]);
  return <div ref={place} dangerouslySetInnerHTML={AS_SERVED} />;
}

/**
 * The sheet for the printer. Nobody sees it on the screen, so it is drawn in its turn, or right before
 * it is printed.
 */
export const Paper = import.meta.env.SSR ? Served : Drawn;
