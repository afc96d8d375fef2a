import { h, render } from 'preact';
import { addressRead, pageAnswers } from '../opening/answering.ts';
import { App } from './App.tsx';
import type { Places } from './places.ts';

const place = document.querySelector<HTMLElement>('[data-practice]');
if (place) {
  place.textContent = '';
  render(h(App, { places: JSON.parse(place.dataset.practice!) as Places }), place);
  place.dataset.ready = 'true';
  pageAnswers();
  addressRead();
}
