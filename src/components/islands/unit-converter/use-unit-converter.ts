import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import {
  computeConversions,
  describeConversions,
  describeProblem,
  findPressureUnit,
  formatPressure,
  parseConversion,
  parseUnitConverterLink,
  unitConverterExample,
  withoutUnit,
  writeUnitConverterLink,
} from '../../../calculators/index.ts';
import type { ConversionForm, ConversionTable, Problem } from '../../../calculators/index.ts';
import { copyText } from '../../../device/clipboard.ts';
import { linkTo, readFragment, writeFragment } from '../../../device/fragment.ts';
import { readSetting, writeSetting } from '../../../device/settings.ts';

export type FormField = 'typed' | 'ambient';

export type Answer =
  | { readonly table: ConversionTable; readonly typedUnit: string | null }
  | { readonly problem: Problem; readonly field: FormField; readonly sentence: string };

/** What was last put on the clipboard, or could not be. */
export type Copied = { readonly text: string; readonly done: boolean; readonly words: string };
const nothingCopied: Copied = { text: '', done: false, words: '' };

const unitSetting = 'pressure-unit';
/** Until somebody stops typing: neither the screen reader nor the address follows every key. */
const pauseMs = 600;

function answerTo(form: ConversionForm): Answer {
  const question = parseConversion(form);
  const conversions = question.ok ? computeConversions(question.value) : question;
  if (conversions.ok)
    return {
      table: describeConversions(conversions.value),
      typedUnit: conversions.value.pressure.unitTyped ? conversions.value.pressure.unit.id : null,
    };
  const { problem } = conversions;
  const field = 'field' in problem && problem.field?.startsWith('ambient') ? 'ambient' : 'typed';
  const unit = question.ok ? question.value.pressure.unit.id : 'kPa';
  const sentence = describeProblem(problem, {
    ...(field === 'ambient' && { typed: form.ambientTyped }),
    formatPressure: (pascals) => formatPressure(pascals, unit),
  });
  return { problem, field, sentence };
}

/**
 * An answer shows at once; a problem only when the typing pauses, so that “9 in” on its way to “9 inHg” is not
 * called wrong. Until then the last answer stays, with the words that say what it answers.
 */
function useAnswerAfterPause(latest: Answer): Answer {
  const [shown, setShown] = useState(latest);
  useEffect(() => {
    const waiting = setTimeout(() => setShown(latest), 'table' in latest ? 0 : pauseMs);
    return () => clearTimeout(waiting);
  }, [latest]);
  return 'table' in latest ? latest : shown;
}

/** Text and state of the converter. The two text fields keep what was typed; the form follows them. */
export function useUnitConverter() {
  const [form, setForm] = useState<ConversionForm>(unitConverterExample);
  const [notices, setNotices] = useState<readonly string[]>([]);
  const [copied, setCopied] = useState<Copied>(nothingCopied);
  const [announced, setAnnounced] = useState('');
  const touched = useRef(false);
  const typedField = useRef<HTMLInputElement>(null);
  const ambientField = useRef<HTMLInputElement>(null);
  const latest = useMemo(() => answerTo(form), [form]);
  const answer = useAnswerAfterPause(latest);

  function show(next: ConversionForm) {
    if (typedField.current) typedField.current.value = next.typed;
    if (ambientField.current) ambientField.current.value = next.ambientTyped;
    setForm(next);
  }

  /** A change by the reader: from now on the address follows. */
  function change(part: Partial<ConversionForm>) {
    touched.current = true;
    setCopied(nothingCopied);
    const next = { ...form, ...part };
    const reading = answerTo(next);
    const usualUnit = ('typedUnit' in reading && reading.typedUnit) || next.usualUnit;
    writeSetting(unitSetting, usualUnit);
    show({ ...next, usualUnit });
  }

  function readAddress() {
    const record = readFragment();
    const remembered = findPressureUnit(readSetting(unitSetting) ?? '')?.id ?? form.usualUnit;
    // What was typed before this script ran stays.
    const early = typedField.current?.value ?? form.typed;
    if (Object.keys(record).length === 0) {
      const asTyped = {
        ...form,
        typed: early,
        ambientTyped: ambientField.current?.value ?? form.ambientTyped,
      };
      return show({ ...asTyped, usualUnit: remembered });
    }
    const link = parseUnitConverterLink(record);
    if (!link.ok) return setNotices([describeProblem(link.problem, { label: 'This link' })]);
    show(link.value.form);
    setNotices([
      ...link.value.problems.map((problem) => describeProblem(problem, { label: 'This link' })),
      ...link.value.unknownKeys.map(
        (key) => `This link: “${key.slice(0, 20)}” is not known here and was ignored.`,
      ),
    ]);
  }

  useEffect(() => {
    readAddress();
    addEventListener('hashchange', readAddress);
    return () => removeEventListener('hashchange', readAddress);
  }, []);

  useEffect(() => {
    if (!touched.current) return;
    const waiting = setTimeout(() => {
      writeFragment(writeUnitConverterLink(form));
      setAnnounced('table' in latest ? latest.table.announcement : latest.sentence);
    }, pauseMs);
    return () => clearTimeout(waiting);
  }, [form]);

  async function copy(text: string, what: string) {
    const done = await copyText(text);
    const words = done
      ? `Copied: ${what}.`
      : `This browser does not let the page copy. Select it here by hand: ${text}`;
    setCopied({ text, done, words });
  }

  return {
    form,
    answer,
    notices,
    copied,
    announced,
    typedField,
    ambientField,
    change,
    /** Another unit takes the place of one that was typed. */
    changeUnit: (usualUnit: string) => change({ usualUnit, typed: withoutUnit(form.typed) || form.typed }),
    copy: (text: string) => void copy(text, text),
    copyLink: () => void copy(linkTo(writeUnitConverterLink(form)), 'the link to this answer'),
  };
}
