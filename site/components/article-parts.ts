import ArticleTable from './ArticleTable.astro';
import Calculator from './Calculator.astro';
import Caution from './Caution.astro';
import Eq from './Eq.astro';
import JobSteps from './JobSteps.astro';
import OnTheBench from './OnTheBench.astro';
import Term from './Term.astro';
import Worked from './Worked.astro';

/** What every article can use without importing it. */
export const articleParts = {
  Calculator,
  Caution,
  Eq,
  JobSteps,
  OnTheBench,
  Term,
  Worked,
  table: ArticleTable,
};
