import ArticleTable from './ArticleTable.astro';
import Caution from './Caution.astro';
import Eq from './Eq.astro';
import FigureInArticle from './FigureInArticle.astro';
import JobSteps from './JobSteps.astro';
import OnTheBench from './OnTheBench.astro';
import SetFigure from './SetFigure.astro';
import Term from './Term.astro';
import Worked from './Worked.astro';

/** What every article can use without importing it. */
export const articleParts = {
  Calculator: FigureInArticle,
  Caution,
  Eq,
  JobSteps,
  OnTheBench,
  Set: SetFigure,
  Table: ArticleTable,
  Term,
  Worked,
  table: ArticleTable,
};
