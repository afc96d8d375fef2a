export type Point = readonly [x: number, y: number];

const ARC_STEP = Math.PI / 36;

/** Points on a circular arc from one point to another, as SVG's path command A has it. */
function arcPoints(
  from: Point,
  radius: number,
  large: boolean,
  sweep: boolean,
  to: Point,
): Point[] {
  const [dx, dy] = [(from[0] - to[0]) / 2, (from[1] - to[1]) / 2];
  const chord = dx * dx + dy * dy;
  if (chord === 0) return [];
  const r = Math.max(radius, Math.sqrt(chord));
  const away = Math.sqrt(Math.max(0, r * r - chord) / chord) * (large === sweep ? -1 : 1);
  const centre = [(from[0] + to[0]) / 2 + away * dy, (from[1] + to[1]) / 2 - away * dx] as const;
  const start = Math.atan2(from[1] - centre[1], from[0] - centre[0]);
  let turn = Math.atan2(to[1] - centre[1], to[0] - centre[0]) - start;
  if (sweep && turn < 0) turn += 2 * Math.PI;
  if (!sweep && turn > 0) turn -= 2 * Math.PI;
  const count = Math.max(1, Math.ceil(Math.abs(turn) / ARC_STEP));
  return Array.from({ length: count }, (_, i): Point => {
    const angle = start + (turn * (i + 1)) / count;
    return [centre[0] + r * Math.cos(angle), centre[1] + r * Math.sin(angle)];
  });
}

const ARGUMENTS: Readonly<Record<string, number>> = { m: 2, l: 2, h: 1, v: 1, a: 7, z: 0 };

/** The lines of a path, each as its points; arcs in chords of five degrees. */
function pathLines(d: string): Point[][] {
  const lines: Point[][] = [];
  let line: Point[] = [];
  let at: Point = [0, 0];
  let command = '';
  const tokens = d.match(/[a-zA-Z]|-?\d*\.?\d+(?:e[-+]?\d+)?/g) ?? [];
  for (let i = 0; i < tokens.length;) {
    if (/[a-zA-Z]/.test(tokens[i]!)) command = tokens[i++]!;
    const lower = command.toLowerCase();
    const count = ARGUMENTS[lower];
    if (count === undefined) throw new Error(`The test knows no path command ${command}`);
    const args = tokens.slice(i, i + count).map(Number);
    i += count;
    const relative = command === lower;
    const along = (x: number, y: number): Point => (relative ? [at[0] + x, at[1] + y] : [x, y]);
    if (lower === 'z') {
      at = line[0] ?? at;
      line.push(at);
      continue;
    }
    if (lower === 'm') {
      at = along(args[0]!, args[1]!);
      line = [at];
      lines.push(line);
      command = relative ? 'l' : 'L';
      continue;
    }
    const from = at;
    if (lower === 'h') at = relative ? [at[0] + args[0]!, at[1]] : [args[0]!, at[1]];
    else if (lower === 'v') at = relative ? [at[0], at[1] + args[0]!] : [at[0], args[0]!];
    else at = along(...(args.slice(-2) as [number, number]));
    if (lower === 'a') line.push(...arcPoints(from, args[0]!, args[3] === 1, args[4] === 1, at));
    else line.push(at);
  }
  return lines;
}

/** The outline of an SVG shape as lines of points, in its own places. */
export function flatten(tag: string, attribute: (name: string) => string | null): Point[][] {
  const at = (name: string): number => Number(attribute(name) ?? 0);
  if (tag === 'path') return pathLines(attribute('d') ?? '');
  if (tag === 'circle') {
    const [x, y, r] = [at('cx'), at('cy'), at('r')];
    return pathLines(`M${x + r} ${y}A${r} ${r} 0 1 1 ${x - r} ${y}A${r} ${r} 0 1 1 ${x + r} ${y}Z`);
  }
  if (tag === 'rect') {
    return pathLines(`M${at('x')} ${at('y')}h${at('width')}v${at('height')}h${-at('width')}Z`);
  }
  if (tag === 'line') return pathLines(`M${at('x1')} ${at('y1')}L${at('x2')} ${at('y2')}`);
  if (tag === 'polyline' || tag === 'polygon') {
    return pathLines(`M${attribute('points') ?? ''}${tag === 'polygon' ? 'Z' : ''}`);
  }
  throw new Error(`The test knows no ${tag}`);
}
