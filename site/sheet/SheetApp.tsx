import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { LengthDisplay } from '../../calculators/frame/text/units.ts';
import { nextDue, spotAt, spotFragment } from '../../calculators/sheet/due.ts';
import { queryFor } from '../../calculators/sheet/fill.ts';
import type { Engine } from '../../calculators/sheet/model.ts';
import { progressOf } from '../../calculators/sheet/progress.ts';
import { adopt } from '../../calculators/sheet/store.ts';
import { stepLine } from '../../calculators/sheet/summary.ts';
import { steps, type StepId } from '../../calculators/sheet/steps.ts';
import { SheetError } from '../../calculators/sheet/errors.ts';
import '../browser/one-line.ts';
import { copyText, type Copied } from '../browser/copy.ts';
import { holdFocus } from '../browser/hold-focus.ts';
import { LengthsChoice } from '../fields/LengthsChoice.tsx';
import { rememberedLengths, watchLengths } from '../opening/preferences.ts';
import { asTyped } from './as-typed.ts';
import { EngineBar } from './EngineBar.tsx';
import { Figures } from './Figures.tsx';
import { Incoming } from './Incoming.tsx';
import { Kept } from './Kept.tsx';
import { Later } from './Later.tsx';
import { Notices } from './Notices.tsx';
import { keepPlace, keptPlace } from './keeper.ts';
import { whenDrawn } from './in-turn.ts';
import { InTurn } from './InTurn.tsx';
import { OneAtATime } from './OneAtATime.tsx';
import { Order } from './Order.tsx';
import { siteAddress } from '../browser/site-address.ts';
import { Paper } from './Paper.tsx';
import type { Places } from './places.ts';
import { ServedOutline } from './ServedOutline.tsx';
import { SpokenRefusals } from './SpokenRefusals.tsx';
import { ShareSheet } from './ShareSheet.tsx';
import { useFragment } from './use-fragment.ts';
import { useReread } from './use-reread.ts';
import { SheetKeys } from './SheetKeys.tsx';
import { SheetSums, useSheetSums } from './sheet-sums.ts';
import { useSheet } from './use-sheet.ts';

/** The way to what is due, for who comes to go on with the job and not to the figures. */
function ToNext({ engine }: { readonly engine: Engine }) {
  const due = nextDue(engine, progressOf(engine));
  return due ? (
    <p class="one-way">
      <a href={`#${spotFragment(due)}`}>Go on: {steps[due.step].title.toLowerCase()}</a>
    </p>
  ) : null;
}

/** Stands after the last part, and so tells when all are drawn. */
function Whole({ then }: { readonly then: (isWhole: boolean) => void }) {
  useLayoutEffect(() => then(true), []);
  return null;
}

interface Props {
  readonly places: Places;
  /** Told once every part of what is kept stands on the page. */
  readonly drawn?: () => void;
}

/** The engine sheet and the order of work. The server renders it without an engine. */
export function SheetApp({ places, drawn }: Props) {
  const sheet = useSheet();
  const { store, engine, keeping, ready, change, edit, dropAside, seen } = sheet;
  const [lengths, setLengths] = useState<LengthDisplay>('mm');
  const [copied, setCopied] = useState<{ readonly id: StepId; readonly copied: Copied }>();
  const [withLog, setWithLog] = useState(false);
  const root = useRef<HTMLDivElement>(null);
  const [isWhole, setWhole] = useState(false);
  const sums = useSheetSums(engine);
  useReread(engine, edit, sums);

  useEffect(() => {
    setLengths(rememberedLengths());
    return watchLengths(setLengths);
  }, []);
  const fragment = useFragment();
  useEffect(() => {
    if (!engine || !ready) return;
    if (/^(?:read|step)-/.test(fragment)) keepPlace(engine.id, fragment);
    else if (fragment === 'order-of-work') keepPlace(engine.id, '');
  }, [engine?.id, fragment]);
  useEffect(() => {
    // Opened without an address of its own, the sheet comes back where it was left.
    const place = engine && location.hash === '' ? keptPlace(engine.id) : '';
    if (place === '') return;
    history.replaceState(null, '', `#${place}`);
    window.dispatchEvent(new HashChangeEvent('hashchange'));
  }, [ready]);
  const spot = engine ? spotAt(fragment, engine) : undefined;
  useEffect(() => (root.current ? holdFocus(root.current) : undefined), []);
  const isAllIn = ready && (isWhole || engine === undefined || spot !== undefined);
  useEffect(() => (isAllIn && drawn ? whenDrawn(drawn) : undefined), [isAllIn]);

  const copyStep = (id: StepId): void => {
    if (!engine) return;
    const slug = steps[id].calculators.find((name) => Object.hasOwn(places.calculators, name));
    const known = slug === undefined ? undefined : places.calculators[slug];
    const query = known ? queryFor(engine, slug!, known) : '';
    const link = known
      ? siteAddress(`calculators/${slug!}/${query === '' ? '' : `?${query}`}`)
      : siteAddress('sheet/');
    const text = `${engine.name}: ${stepLine(engine, id, lengths)}\n${link}`;
    void copyText('Figure', text).then((done) => setCopied({ id, copied: done }));
  };

  const boxes = { lengths, edit };
  return (
    <div class="sheet">
      <SheetSums.Provider value={sums}>
        <SheetKeys>
          <div class="screen" ref={root}>
            <Incoming
              take={(incoming) => {
                try {
                  change((before) => adopt(before, [incoming]));
                  return `${incoming.name} is in your list now.${asTyped(incoming)}`;
                } catch (error) {
                  if (!(error instanceof SheetError)) throw error;
                  return error.message;
                }
              }}
            />
            <Notices keeping={keeping} lengths={lengths} dropAside={dropAside} seen={seen} />
            <div class={ready ? undefined : 'not-yet'} hidden={spot !== undefined}>
              <EngineBar store={store} engine={engine} change={change} edit={edit} />
            </div>
            {engine && spot ? (
              <OneAtATime engine={engine} spot={spot} places={places} {...boxes} />
            ) : engine ? (
              <>
                <section aria-labelledby="the-engine">
                  <h2 id="the-engine">The engine</h2>
                  <p>Enter what you know; the calculators take it from here.</p>
                  <ToNext engine={engine} />
                  <LengthsChoice lengths={lengths} idPrefix="sheet-" />
                  <Figures engine={engine} {...boxes} />
                  <SpokenRefusals key={engine.id} engine={engine} lengths={lengths} />
                </section>
                <InTurn atOnce={isWhole}>
                  <Order
                    key={engine.id}
                    engine={engine}
                    places={places}
                    copyStep={copyStep}
                    copied={copied}
                    {...boxes}
                  />
                </InTurn>
                <InTurn atOnce={isWhole}>
                  <section aria-labelledby="the-log">
                    <h2 id="the-log">Log</h2>
                    <Later
                      key={engine.id}
                      name={`The whole log, runs and notes (${String(engine.log.length)})`}
                      load={() => import('./LogBook.tsx').then(({ LogBook }) => LogBook)}
                      given={{ engine, ...boxes }}
                    />
                  </section>
                  <Kept engine={engine} edit={edit} />
                </InTurn>
                <InTurn atOnce={isWhole}>
                  <ShareSheet
                    engine={engine}
                    lengths={lengths}
                    withLog={withLog}
                    printLog={setWithLog}
                  />
                  <Whole then={setWhole} />
                </InTurn>
              </>
            ) : (
              <ServedOutline />
            )}
          </div>
        </SheetKeys>
      </SheetSums.Provider>
      <Paper engine={engine} lengths={lengths} withLog={withLog} />
    </div>
  );
}
