import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, globSync } from 'node:fs';
import { setTimeout } from 'node:timers/promises';
import { Builder, By, Capabilities, Key, Origin, until, type WebDriver } from 'selenium-webdriver';
import { freePort } from '../free-port.ts';
import {
  missingSentence,
  type Engine,
  type EngineKind,
  type Key as Pressed,
  type Size,
  type Tab,
} from './engine.ts';
import { FRAMES } from './watched.ts';

const DRIVER = '/usr/bin/WebKitWebDriver';
const SCREEN = '/usr/bin/Xvfb';
const [browser = ''] = globSync('/usr/lib/*/webkit2gtk-4.*/MiniBrowser');

const KEYS: Readonly<Partial<Record<Pressed, string>>> = {
  Tab: Key.TAB,
  Control: Key.CONTROL,
  ArrowRight: Key.ARROW_RIGHT,
  ArrowUp: Key.ARROW_UP,
};

/** Ends a program and all that it has started. */
async function stop(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const ended = once(child, 'exit');
  process.kill(-child.pid!, 'SIGKILL');
  await ended;
}

/** The driver loses a browser now and then, and waits for it without end; axe takes long beside a busy core. */
const PATIENCE_MS = 40_000;
const TRIES = 3;

const within = <T>(work: Promise<T>): Promise<T> =>
  Promise.race([
    work,
    setTimeout(PATIENCE_MS, undefined, { ref: false }).then(() =>
      Promise.reject(new Error(`No answer within ${PATIENCE_MS} ms.`)),
    ),
  ]);

/** A screen that nobody sees; its name. */
async function screen(): Promise<{ child: ChildProcess; display: string }> {
  const args = ['-displayfd', '3', '-screen', '0', '1280x1024x24', '-nolisten', 'tcp'];
  const child = spawn(SCREEN, args, {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
    detached: true,
  });
  const ended = once(child, 'exit').then(() => Promise.reject(new Error('Xvfb ended at once.')));
  const [number] = (await Promise.race([once(child.stdio[3]!, 'data'), ended])) as [Buffer];
  ended.catch(() => undefined);
  return { child, display: `:${number.toString().trim()}` };
}

/** The driver, once it answers. */
async function driver(display: string): Promise<{ child: ChildProcess; url: string }> {
  const port = await freePort();
  const child = spawn(DRIVER, [`--port=${port}`], {
    stdio: 'ignore',
    detached: true,
    env: { ...process.env, DISPLAY: display, LIBGL_ALWAYS_SOFTWARE: '1' },
  });
  const url = `http://127.0.0.1:${port}`;
  const answers = (): Promise<boolean> =>
    fetch(`${url}/status`).then(
      ({ ok }) => ok,
      () => false,
    );
  for (let tries = 0; !(await answers()); tries += 1) {
    if (tries === 200) throw new Error('WebKitWebDriver does not answer.');
    await setTimeout(50);
  }
  return { child, url };
}

/** Without its tool bar (full screen), the window can be as narrow as a phone. */
async function session(url: string, view: Size): Promise<WebDriver> {
  const options = { binary: browser, args: ['--automation', '--full-screen'] };
  const web = await new Builder()
    .usingServer(url)
    .withCapabilities(
      new Capabilities({ browserName: 'MiniBrowser', 'webkitgtk:browserOptions': options }),
    )
    .build();
  await web
    .manage()
    .window()
    .setRect({ x: 0, y: 0, ...view });
  return web;
}

function middle(element: Element): [x: number, y: number] {
  element.scrollIntoView({ block: 'center' });
  const { x, y, width, height } = element.getBoundingClientRect();
  return [Math.round(x + width / 2), Math.round(y + height / 2)];
}

const locator = (where: string): By => (where.startsWith('//') ? By.xpath(where) : By.css(where));

function tabOf(here: () => Promise<WebDriver>): Tab {
  const find = async (where: string) =>
    (await here()).wait(until.elementLocated(locator(where)), 10_000);
  return {
    open: async (address) => within((await here()).get(address)),
    reload: async () => within((await here()).navigate().refresh()),
    back: async () => (await here()).navigate().back(),
    address: async () => (await here()).getCurrentUrl(),
    run: async (body, ...given) => within((await here()).executeScript(body, ...given)),
    load: async (script) => (await here()).executeScript(script),
    click: async (where) => {
      const element = await find(where);
      // Out at the edge of the window the driver finds it covered, or does not reach it.
      await (await here()).executeScript(middle, element);
      await within(element.click());
    },
    type: async (text) => (await here()).actions().sendKeys(text).perform(),
    press: async (...keys) => {
      const names = keys.map((key) => KEYS[key] ?? key);
      const held = names.slice(0, -1);
      const actions = (await here()).actions();
      for (const key of held) actions.keyDown(key);
      actions.sendKeys(names.at(-1)!);
      for (const key of held.toReversed()) actions.keyUp(key);
      await actions.perform();
    },
    drag: async (where, right, down) => {
      const element = await find(where);
      const web = await here();
      // The driver finds no middle of a part of a drawing, so the page is asked for it.
      const [x, y] = await web.executeScript<[number, number]>(middle, element);
      const actions = web.actions().move({ x, y }).press();
      for (let step = 1; step <= 8; step += 1) {
        actions.move({ x: Math.round(right / 8), y: Math.round(down / 8), origin: Origin.POINTER });
      }
      await actions.release().perform();
    },
    screenshot: async () => Buffer.from(await within((await here()).takeScreenshot()), 'base64'),
  };
}

/** One of two documents in a window, which share all that the browser keeps as two tabs do. */
function frameOf(driver: () => WebDriver, id: 'first' | 'second'): Tab {
  const outside = async (): Promise<WebDriver> => {
    await driver().switchTo().defaultContent();
    return driver();
  };
  const inside = async (): Promise<WebDriver> => {
    const web = await outside();
    await web.switchTo().frame(await web.findElement(By.id(id)));
    return web;
  };
  const tab = tabOf(inside);
  /** Leads the frame elsewhere, or to where it is, and waits until that is loaded. */
  const lead = async (address: string | undefined): Promise<void> =>
    within(
      (await outside()).executeAsyncScript<undefined>(
        (name: string, to: string | undefined, loaded: () => void) => {
          const frame = document.getElementById(name) as HTMLIFrameElement;
          frame.addEventListener('load', () => loaded(), { once: true });
          if (to === undefined) frame.contentWindow!.location.reload();
          else frame.src = to;
        },
        id,
        address,
      ),
    );
  return {
    ...tab,
    open: lead,
    reload: () => lead(undefined),
    back: () => tab.run(() => history.back()),
    address: () => tab.run(() => location.href),
  };
}

/** WebKit in the small window that comes with WebKitGTK, on a screen that nobody sees. */
async function start(view: Size): Promise<Engine> {
  await using starting = new AsyncDisposableStack();
  const { child: server, display } = await screen();
  starting.defer(() => stop(server));
  let driving = await driver(display);
  starting.defer(() => stop(driving.child));
  let web: WebDriver;
  /** A browser that knows nothing, with a driver of its own. */
  const afresh = async (): Promise<void> => {
    for (let tries = 1; ; tries += 1) {
      await stop(driving.child);
      driving = await driver(display);
      try {
        web = await within(session(driving.url, view));
        return;
      } catch (error) {
        if (tries === TRIES) throw error;
      }
    }
  };
  await afresh();
  const started = starting.move();

  const alone = tabOf(() => Promise.resolve(web));
  /** Whether two documents stand beside each other: the driver shows one window at a time. */
  let beside = false;
  const first = frameOf(() => web, 'first');
  /** The first page, in whichever of the two it is. */
  const here: Tab = {
    open: (address) => (beside ? first : alone).open(address),
    reload: () => (beside ? first : alone).reload(),
    back: () => (beside ? first : alone).back(),
    address: () => (beside ? first : alone).address(),
    run: (body, ...given) => (beside ? first : alone).run(body, ...given),
    load: (script) => (beside ? first : alone).load(script),
    click: (where) => (beside ? first : alone).click(where),
    type: (text) => (beside ? first : alone).type(text),
    press: (...pressed) => (beside ? first : alone).press(...pressed),
    drag: (where, right, down) => (beside ? first : alone).drag(where, right, down),
    screenshot: () => alone.screenshot(),
  };
  return {
    ...here,
    tab: async () => {
      const address = await alone.address();
      await alone.open(new URL(`/${FRAMES}`, address).href);
      beside = true;
      await first.open(address);
      return {
        ...frameOf(() => web, 'second'),
        close: async () => {
          const shown = await first.address();
          beside = false;
          await web.switchTo().defaultContent();
          await alone.open(shown);
        },
      };
    },
    forget: async () => {
      beside = false;
      await afresh();
    },
    close: () => started.disposeAsync(),
  };
}

export const webkit: EngineKind = {
  name: 'WebKit',
  missing: missingSentence('WebKit', [
    { there: existsSync(DRIVER) && browser !== '', from: 'webkit2gtk-driver' },
    { there: existsSync(SCREEN), from: 'xvfb' },
  ]),
  start,
};
