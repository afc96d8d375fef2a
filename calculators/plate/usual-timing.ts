import { fixed } from '../frame/text/format.ts';
import { EARLIEST_USUAL, LATEST_USUAL } from '../maths/limits/earliest-spark.ts';

const PRACTICE = '15° to 35° before it is common practice';

/**
 * What speaks against a timing that no engine of this kind is set to; nothing of a usual one.
 *
 * @param angle Crank degrees before the top, negative after it.
 */
export function unusualTiming(angle: number): string | undefined {
  const place = `${fixed(Math.abs(angle), 0)}° ${angle < 0 ? 'after' : 'before'} the top`;
  if (angle < LATEST_USUAL) {
    return `${place}, later than such engines are set: ${PRACTICE}. One set so late runs hot and has no power.`;
  }
  return angle > EARLIEST_USUAL
    ? `${place}, earlier than such engines are set: ${PRACTICE}. One set so early kicks back, knocks, and holes its pistons.`
    : undefined;
}
