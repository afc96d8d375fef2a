import { h } from 'preact';
import { hydrateInPlace } from '../browser/hydrate.ts';
import { addressRead, pageAnswers, sheetRead } from '../opening/answering.ts';
import { letHeightGo } from './held-height.ts';
import type { Places } from './places.ts';
import { SheetApp } from './SheetApp.tsx';

/** Takes the sheet into use. */
export function mount(place: HTMLElement): void {
  const { places } = document.querySelector<HTMLElement>('[data-places]')!.dataset;
  const drawn = (): void => {
    if (place.dataset.ready) return;
    letHeightGo(place);
    place.dataset.ready = 'true';
  };
  hydrateInPlace(h(SheetApp, { places: JSON.parse(places!) as Places, drawn }), place);
  pageAnswers();
  addressRead();
  sheetRead();
}
