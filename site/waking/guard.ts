import { createHash } from 'node:crypto';
import { LATE_MS } from '../opening/answering.ts';
import { KEY as SHEET } from '../opening/keeps-sheet.ts';
import { KEY as TYPED } from '../opening/kept-work.ts';
import { KEY as LENGTHS } from '../opening/preferences.ts';

/**
 * What stands in the head of a page whose address may hold figures, within the page itself: it has
 * to work when every other file of the page is late or gone.
 *
 * `data-asked` on the document: the address holds figures that the page has not read yet, so no
 * figure that the server worked out may be seen. `data-kept`: nor before those of the reader's own
 * sheet stand in a calculator, and nothing of the sheet before it is read. `data-failed`: a script of the page did not come.
 * `data-lengths`: the reader's remembered lengths, for texts that no script draws.
 * What was typed meanwhile is kept for the page that is loaded again, as kept-work.ts does and reads.
 * `data-part` of the script itself names the part of the address that may hold them; `data-late` that
 * the page is to say when it does not answer for long.
 */
export const guardScript = [
  '(()=>{',
  'const page=document.documentElement.dataset,{part,late}=document.currentScript.dataset;',
  'if(part&&location[part].length>1)page.asked="";',
  `try{if(part&&localStorage.getItem("${SHEET}")!==null)page.kept=""}catch{}`,
  `try{page.lengths=localStorage.getItem("${LENGTHS}")==="in"?"in":"mm"}catch{}`,
  'const fail=()=>{if(page.ready===undefined||page.asked!==undefined)page.failed=""};',
  'addEventListener("error",e=>{if(e.target instanceof HTMLScriptElement)fail()},true);',
  `const keep=()=>{const name="${TYPED}",{pathname}=location,old=JSON.parse(sessionStorage.getItem(name));`,
  'const texts=[...document.querySelectorAll("[data-calculator]")].map((place,i)=>{',
  'const all={...(old?.page===pathname&&old.texts[i])};',
  'for(const box of place.querySelectorAll(".calc-form input")){',
  'const radio=box.type==="radio",key=radio?box.name.slice(place.dataset.prefix.length):box.name;',
  'if(radio?box.checked&&!box.defaultChecked&&key!=="lengths":box.value!==box.defaultValue)all[key]=box.value}',
  'return all});sessionStorage.setItem(name,JSON.stringify({page:pathname,texts}))};',
  // Safari remembers over a reload that a script did not come, until it is asked for as something else; on a
  // line that hangs, not for long.
  'const again=()=>location.reload(),ask=({href})=>fetch(href,{cache:"reload"});',
  // While there is no line at all the page stays, and with it what was typed: loaded again it would be gone.
  'addEventListener("click",e=>{const button=e.target instanceof Element&&e.target.closest("[data-reload]");if(!button)return;',
  'try{keep()}catch{}const late=setTimeout(again,4000);',
  'Promise.all([ask(location),Promise.allSettled([...document.querySelectorAll("link[rel=modulepreload]")].map(ask))])',
  '.then(again,()=>{clearTimeout(late);button.textContent="Still no connection. Try again"})});',
  `if(part||late)setTimeout(()=>{delete page.kept;fail()},${LATE_MS})`,
  '})()',
].join('');

/** Within the page too, since a style sheet can be gone as a script can. */
export const guardStyle = [
  '.waiting,.waiting>*{display:none}',
  ':root[data-asked] .waiting,:root[data-failed] .waiting{display:block}',
  ':root[data-asked]:not([data-failed]) .waiting-read,',
  ':root[data-asked][data-failed] .waiting-unread,',
  ':root[data-failed]:not([data-asked]) .waiting-still,',
  ':root[data-failed] .waiting-again{display:block}',
  ':root[data-kept]:not([data-failed]) :is([data-owns=true],[data-sheet]),:root[data-asked] [data-owns=true],:root[data-asked] .ready{visibility:hidden}',
].join('');

const hashOf = (text: string): `sha256-${string}` =>
  `sha256-${createHash('sha256').update(text).digest('base64')}`;

/** For the content security policy. */
export const guardHashes = { script: hashOf(guardScript), style: hashOf(guardStyle) };
