import { Press } from './Press.tsx';

interface Props {
  readonly turn: (by: number) => void;
}

const STEPS = [10, 1, 0.1] as const;

/** The spanner: steps either way, each under its opposite; held, it goes on. */
export function Turning({ turn }: Props) {
  return (
    <div class="turning-bar">
      <div class="turn-steps" role="group" aria-label="Turn the crank backwards">
        {STEPS.map((step) => (
          <Press key={step} repeats label={`−${step}°, backwards`} onPress={() => turn(-step)}>
            −{step}°
          </Press>
        ))}
      </div>
      <div class="turn-steps" role="group" aria-label="Turn the crank forwards">
        {STEPS.map((step) => (
          <Press key={step} repeats label={`+${step}°, forwards`} onPress={() => turn(step)}>
            +{step}°
          </Press>
        ))}
      </div>
    </div>
  );
}
