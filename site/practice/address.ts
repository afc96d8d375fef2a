import { isEngineNumber } from '../../calculators/practice/engine.ts';
import { taskNames, type TaskName } from '../../calculators/practice/tasks.ts';

export interface Asked {
  readonly engine: number;
  readonly task: TaskName;
  /** What has been done on the bench beforehand, in the words of its acts. */
  readonly done: string;
  /** What of the address could not be read, in a sentence. */
  readonly problem: string;
}

const FIRST: Omit<Asked, 'problem'> = { engine: 1, task: 'stop', done: '' };

const isTask = (name: string): name is TaskName => (taskNames as readonly string[]).includes(name);

/** Which engine and task an address asks for; the first of each where it asks for none. */
export function readAddress(search: string): Asked {
  const query = new URLSearchParams(search);
  const number = query.get('engine');
  const name = query.get('task');
  const problems: string[] = [];
  let { engine, task } = FIRST;
  if (number !== null) {
    if (/^\d{1,6}$/.test(number) && isEngineNumber(Number(number))) engine = Number(number);
    else problems.push('An engine is a whole number from 0 to 999999, so this is engine 1.');
  }
  if (name !== null) {
    if (isTask(name)) task = name;
    else problems.push('There is no task of that name, so this is the first one.');
  }
  return { engine, task, done: query.get('done') ?? '', problem: problems.join(' ') };
}

export const writeAddress = ({ engine, task }: Pick<Asked, 'engine' | 'task'>): string =>
  `?engine=${engine}&task=${task}`;
