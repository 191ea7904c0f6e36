import type { DescribedThreadTravel, ThreadTravelBudgetField } from '../../../calculators/index.ts';
import type { Calculator } from '../calculator/use-calculator.ts';

export type ThreadField = ThreadTravelBudgetField;

export interface QuestionsProps {
  readonly calculator: Calculator<DescribedThreadTravel, ThreadField>;
}
