import { h } from 'preact';
import { takeOver } from '../calculator/take-over.ts';
import { addressRead, pageAnswers } from '../waiting/answering.ts';
import type { Places } from './places.ts';
import { SheetApp } from './SheetApp.tsx';

const place = document.querySelector<HTMLElement>('[data-sheet]');
if (place) {
  takeOver(h(SheetApp, { places: JSON.parse(place.dataset.sheet!) as Places }), place);
  place.dataset.ready = 'true';
  pageAnswers();
  addressRead();
}
