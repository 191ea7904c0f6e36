import { checklistCode, checklistVersion, writeChecklistLink } from '../../../calculators/index.ts';
import type { ChecklistForm } from '../../../calculators/index.ts';
import { addressWith } from '../../../device/fragment.ts';
import { siteAddress } from '../../../device/site-address.ts';

const path = siteAddress('/checklists/');
const page = (): string => location.origin + path;

/** The link, from any page of this site, that opens a list with a club’s words. */
export const checklistPath = (form: ChecklistForm): string => addressWith(path, writeChecklistLink(form));

/** The address that opens it from anywhere. */
export const checklistAddress = (form: ChecklistForm): string =>
  addressWith(page(), writeChecklistLink(form));

/** What the code of a list says; it carries the version of the paper that it is printed on. */
export const codeOf = (form: ChecklistForm) => {
  const printed = { ...form, printed: checklistVersion };
  return checklistCode(checklistAddress(printed), checklistAddress({ ...printed, heading: '', notes: '' }));
};

/** The page of all lists as it is written on paper. */
export const pageOnPaper = (): string => page().replace(/^https?:\/\//u, '');
