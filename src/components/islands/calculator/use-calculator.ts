import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { RefObject } from 'preact';
import { initialForm } from '../../../calculators/index.ts';
import type {
  CalculatorLink,
  Form,
  FormAnswer,
  FormFields,
  Problem,
  Result,
  SaidProblem,
} from '../../../calculators/index.ts';
import { copyText } from '../../../device/clipboard.ts';
import { linkTo, readFragment, writeFragment } from '../../../device/fragment.ts';
import { readKeptForm, writeKeptForm } from '../../../device/kept-form.ts';
import { useProblemWords } from './use-problem-words.ts';

/** What was last put on the clipboard, or could not be. */
export type Copied = { readonly text: string; readonly done: boolean; readonly words: string };
const nothingCopied: Copied = { text: '', done: false, words: '' };

/** What of a link could not be taken. */
type LinkFaults = { readonly problems: readonly Problem[]; readonly unknownKeys: readonly string[] };
const noFaults: LinkFaults = { problems: [], unknownKeys: [] };

/** Until somebody stops typing: neither the screen reader, the address nor a complaint follows every key. */
const pauseMs = 600;

/** Every answer has a sentence for a screen reader; the rest is the calculator's own. */
export interface Announced {
  readonly announcement: string;
}

export interface CalculatorParts<Described extends Announced, Field extends string> {
  readonly slug: string;
  readonly fields: FormFields<Field>;
  readonly answer: (form: Form<Field>) => FormAnswer<Described, Field>;
  /** The form after a change, where one field follows on another; each stands alone if left out. */
  readonly changed?: (form: Form<Field>, part: Partial<Form<Field>>) => Form<Field>;
  /** The keys of a link, usually the names of the fields; others where there were links before the fields had these names. */
  readonly link: {
    readonly write: (form: Form<Field>) => Readonly<Record<string, string>>;
    readonly parse: (record: Readonly<Record<string, string>>) => Result<CalculatorLink<Field>>;
  };
}

export interface Calculator<Described extends Announced, Field extends string> {
  readonly form: Form<Field>;
  readonly formRef: RefObject<HTMLFormElement>;
  /** A change by the reader; the same function at every drawing. */
  readonly change: (part: Partial<Form<Field>>) => void;
  /** The last good answer; null before there was one. */
  readonly answer: Described | null;
  /** Whether the entries have no answer: `answer` then belongs to earlier ones and must not be read. */
  readonly stale: boolean;
  readonly problemOf: (field: Field) => SaidProblem<Field> | undefined;
  /** What is wrong with the link. */
  readonly notices: readonly string[];
  readonly announced: string;
  readonly copied: Copied;
  /** Puts a text on the clipboard; `what` names it where it is too long to be read back. */
  readonly copy: (text: string, what?: string) => void;
  readonly copyLink: () => void;
  /** Whether the entries were left here on an earlier visit. */
  readonly kept: boolean;
  /** Back to the worked example. */
  readonly startAgain: () => void;
  /** Moves to the first field that has to be put right. */
  readonly lookAtProblem: () => void;
}

/**
 * An answer shows at once; a problem only when the typing pauses, so that “9 in” on its way to “9 inHg” is not
 * called wrong. Until then the last answer stays.
 */
function useAnswerAfterPause<Described, Field extends string>(
  latest: FormAnswer<Described, Field>,
): FormAnswer<Described, Field> {
  const shown = useRef(latest);
  const [waited, setWaited] = useState(latest);
  useEffect(() => {
    if (latest.ok) return;
    const waiting = setTimeout(() => setWaited(latest), pauseMs);
    return () => clearTimeout(waiting);
  }, [latest]);
  if (latest.ok || waited === latest) shown.current = latest;
  return shown.current;
}

/** Text and state of a calculator: the form, its answer, its link, and the entries kept on the device. */
export function useCalculator<Described extends Announced, Field extends string>({
  slug,
  fields,
  answer: answerTo,
  changed = (form, part) => ({ ...form, ...part }),
  link: { write, parse },
}: CalculatorParts<Described, Field>): Calculator<Described, Field> {
  const first = useMemo(() => initialForm(fields), []);
  const [form, setForm] = useState(first);
  const [faults, setFaults] = useState(noFaults);
  const [copied, setCopied] = useState<Copied>(nothingCopied);
  const [announced, setAnnounced] = useState('');
  const [kept, setKept] = useState(false);
  const touched = useRef(false);
  const formRef = useRef<HTMLFormElement>(null);

  const latest = useMemo(() => answerTo(form), [form]);
  const shown = useAnswerAfterPause(latest);
  // The last answer keeps its place while there is none, so that nothing jumps.
  const lastAnswer = useRef<Described | null>(null);
  if (shown.ok) lastAnswer.current = shown.answer;
  const say = useProblemWords();
  const sayAll = (each: typeof latest): readonly SaidProblem<Field>[] =>
    each.ok ? [] : each.problems.map(say);
  const problems = useMemo(() => sayAll(shown), [shown, say]);
  const notices = [
    ...faults.problems.map(
      (problem) => say({ field: 'link', problem, words: { label: 'This link' } }).sentence,
    ),
    ...faults.unknownKeys.map((key) => `This link: “${key.slice(0, 20)}” is not known here and was ignored.`),
  ];

  /** By the reader: from now on the address follows. */
  const [replace] = useState(() => (next: (before: Form<Field>) => Form<Field>) => {
    touched.current = true;
    setCopied(nothingCopied);
    setForm(next);
  });
  const [change] = useState(() => (part: Partial<Form<Field>>) => replace((before) => changed(before, part)));

  function readAddress() {
    const record = readFragment();
    const fromLink = Object.keys(record).length > 0;
    const read = parse(fromLink ? record : readKeptForm(slug));
    if (!read.ok) {
      if (fromLink) setFaults({ problems: [read.problem], unknownKeys: [] });
      return;
    }
    touched.current = false;
    setForm(read.value.form);
    setKept(!fromLink && JSON.stringify(write(read.value.form)) !== JSON.stringify(write(first)));
    if (fromLink) setFaults(read.value);
  }

  useLayoutEffect(() => {
    const entries = { ...readFragment(), ...readKeptForm(slug) };
    if (Object.keys(entries).length > 0) readAddress();
    addEventListener('hashchange', readAddress);
    return () => removeEventListener('hashchange', readAddress);
  }, []);

  useEffect(() => {
    if (!touched.current) return;
    const waiting = setTimeout(() => {
      const link = write(form);
      writeFragment(link);
      writeKeptForm(slug, link);
      setAnnounced(
        latest.ok
          ? latest.answer.announcement
          : sayAll(latest)
              .map(({ sentence }) => sentence)
              .join(' '),
      );
    }, pauseMs);
    return () => clearTimeout(waiting);
  }, [form, say]);

  async function put(text: string, what: string) {
    const done = await copyText(text);
    const words = done
      ? `Copied: ${what}.`
      : `This browser does not let the page copy. Select it here by hand: ${text}`;
    setCopied({ text, done, words });
  }

  const lookAt = (field: Field): void =>
    formRef.current?.querySelector<HTMLElement>(`[name="${field}"]`)?.focus();

  return {
    form,
    formRef,
    change,
    answer: lastAnswer.current,
    stale: !shown.ok,
    problemOf: (field: Field): SaidProblem<Field> | undefined =>
      problems.find((each) => each.field === field),
    notices,
    announced,
    copied,
    copy: (text: string, what = text) => void put(text, what),
    copyLink: () => void put(linkTo(write(form)), 'the link to this answer'),
    kept,
    startAgain: () => {
      setKept(false);
      setFaults(noFaults);
      replace(() => first);
    },
    lookAtProblem: () => {
      const [problem] = problems;
      if (problem !== undefined) lookAt(problem.field);
    },
  };
}
