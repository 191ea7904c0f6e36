import { refuse } from './calculator-answer.ts';
import type { FormAnswer } from './calculator-answer.ts';
import type { Form } from './calculator-form.ts';
import type { ThreadTravelBudgetField } from './thread-travel-budget-fields.ts';
import { parseThreadTravelBudget } from './thread-travel-budget-form.ts';
import { describeThreadTravelBudget } from './thread-travel-budget-words.ts';
import type { DescribedThreadTravel } from './thread-travel-budget-words.ts';
import { budgetOfChecked } from './thread-travel-budget.ts';

/** What the page answers to its form: read, computed, put into words. */
export function answerThreadTravelBudget(
  form: Form<ThreadTravelBudgetField>,
): FormAnswer<DescribedThreadTravel, ThreadTravelBudgetField> {
  const parsed = parseThreadTravelBudget(form);
  if (!parsed.ok) return refuse(parsed.problems, (field) => ({ typed: form[field] }));
  // The form lets nothing pass that the budget would refuse.
  return { ok: true, answer: describeThreadTravelBudget(parsed.value, budgetOfChecked(parsed.value.travel)) };
}
