interface Chapter {
  /** Slug of the article. */
  readonly article: string;
  /** What to take from it. */
  readonly take: string;
}

/** The theory in an evening: seven articles in the order in which each rests on those before it. */
export const evening: readonly Chapter[] = [
  {
    article: 'one-turn-of-a-two-stroke',
    take: 'Two things happen at once, one above the piston and one below it. The ports are the timing of the gas, and the points are the timing of the spark.',
  },
  {
    article: 'where-the-piston-is',
    take: 'Three lengths turn millimetres before the top into degrees and back. Between two engines it is the angle that is carried across.',
  },
  {
    article: 'finding-top-dead-centre',
    take: 'The top cannot be found by looking for it. Stop the piston at one height on both sides, and halve the arc.',
  },
  {
    article: 'how-the-points-make-the-spark',
    take: 'While the points are shut the coil fills. The moment they open is the moment of the spark.',
  },
  {
    article: 'gap-dwell-and-timing',
    take: 'Gap, dwell and timing hang on one screw. A wider gap is an earlier spark, so the gap comes first and the timing second.',
  },
  {
    article: 'setting-several-cylinders',
    take: 'The plate is for what all cylinders have in common, the slots for what is left. Against the cam is earlier.',
  },
  {
    article: 'float-height-and-fuel-level',
    take: 'What is set is the height of the float, what the engine feels is the level of the fuel. A clear tube proves it.',
  },
];

/** The chapter that comes after one of them; none after the last, or after any other article. */
export function chapterAfter(article: string): string | undefined {
  const place = evening.findIndex((chapter) => chapter.article === article);
  return place < 0 ? undefined : evening[place + 1]?.article;
}
