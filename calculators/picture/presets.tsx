import type { ComponentChildren } from 'preact';

interface Props {
  readonly name: string;
  readonly children: ComponentChildren;
}

/** Buttons that fill in what is usual, folded to a line so that the figure in hand stays in sight. */
export function Presets({ name, children }: Props) {
  return (
    <details class="presets-fold">
      <summary>{name}</summary>
      <div class="presets" role="group" aria-label={name}>
        {children}
      </div>
    </details>
  );
}
