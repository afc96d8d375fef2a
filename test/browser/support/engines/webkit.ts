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

/** The driver loses a browser now and then, and waits for it without end. */
const PATIENCE_MS = 15_000;
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

  let shown: string | undefined;
  /** The driver works on one page at a time, so each call goes to its own first. */
  const at = (page: () => Promise<string>) => async (): Promise<WebDriver> => {
    const handle = await page();
    if (handle !== shown) await web.switchTo().window(handle);
    shown = handle;
    return web;
  };
  let first: string | undefined;
  return {
    ...tabOf(at(async () => (first ??= await web.getWindowHandle()))),
    tab: async () => {
      first ??= await web.getWindowHandle();
      await web.switchTo().newWindow('tab');
      const handle = await web.getWindowHandle();
      shown = handle;
      const here = at(() => Promise.resolve(handle));
      return {
        ...tabOf(here),
        close: async () => {
          await (await here()).close();
          shown = undefined;
        },
      };
    },
    forget: async () => {
      first = undefined;
      shown = undefined;
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
