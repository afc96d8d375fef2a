import { h } from 'preact';
import { hydrateInPlace } from '../browser/hydrate.ts';
import { addressRead, pageAnswers } from '../opening/answering.ts';
import type { Places } from './places.ts';
import { SheetApp } from './SheetApp.tsx';

const place = document.querySelector<HTMLElement>('[data-sheet]');
if (place) {
  hydrateInPlace(h(SheetApp, { places: JSON.parse(place.dataset.sheet!) as Places }), place);
  place.dataset.ready = 'true';
  pageAnswers();
  addressRead();
}
