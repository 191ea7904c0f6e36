import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { answerChecklists, writeChecklistLink } from '../../calculators/index.ts';
import { copyText } from '../../device/clipboard.ts';
import { addressWith } from '../../device/fragment.ts';
import { siteAddress } from '../../device/site-address.ts';
import { checklistAddress, codeOf, pageOnPaper } from './checklists/address.ts';
import { Block } from './checklists/Block.tsx';
import { PaperRecord } from './checklists/PaperRecord.tsx';
import { QrCode } from './checklists/QrCode.tsx';
import { useChecklist } from './checklists/use-checklist.ts';
import { useTicks } from './checklists/use-ticks.ts';

const page = siteAddress('/checklists/');
const dateWords = (instant: string): string =>
  new Date(instant).toLocaleString('en-GB', { dateStyle: 'long', timeStyle: 'short' });

/** A checklist: on the screen to be ticked, on paper one sheet. */
export default function Checklists() {
  const { form, opened, notices, running, chosenHere } = useChecklist();
  const list = useMemo(() => {
    const answered = answerChecklists(form);
    if (!answered.ok) throw new Error('an opened list has a problem');
    return answered.answer;
  }, [form]);
  const ticks = useTicks(list.id);
  const [said, setSaid] = useState('');
  const title = useRef<HTMLHeadingElement>(null);
  const code = useMemo(() => (running ? codeOf(form) : null), [form, running]);

  useEffect(() => {
    setSaid('');
    if (!opened) return;
    const before = document.title;
    document.title = `Checklist: ${list.heading} · Evendraw`;
    if (chosenHere) {
      scrollTo(0, 0);
      title.current?.focus({ preventScroll: true });
    }
    return () => void (document.title = before);
  }, [list.heading, list.id, opened, chosenHere]);

  async function copyLink() {
    const link = checklistAddress(form);
    setSaid(
      (await copyText(link))
        ? 'Copied: the link to this list.'
        : `This browser does not let the page copy. Select it here by hand: ${link}`,
    );
  }

  const warnings = list.otherEdition === null ? notices : [...notices, list.otherEdition];
  const Title = opened ? 'h1' : 'h2';
  const level = opened ? 'h2' : 'h3';
  const isTools = list.list === 'tools';
  const other = addressWith(page, writeChecklistLink({ ...form, list: isTools ? 'work' : 'tools' }));
  const [left, right] = list.columns;
  return (
    <>
      {warnings.length > 0 && (
        <div class="errors screen-only" role="alert">
          {warnings.map((notice) => (
            <p key={notice}>{notice}</p>
          ))}
        </div>
      )}
      <article class={opened ? 'check sheet opened' : 'check sheet'} aria-labelledby="sheet-title">
        <div class="sheet-head">
          <Title id="sheet-title" ref={title} tabIndex={-1} dir="auto">
            {list.heading}
          </Title>
          {list.hasOwnHeading && <p class="sheet-for">{list.title}</p>}
          <p class="aside">
            Interrupted? Start the block again from its first line. Where your service manual differs, it
            comes first.
          </p>
          {code && <QrCode address={code.text} label="QR code: opens this checklist" />}
        </div>
        {ticks.earlier !== null && (
          <p class="screen-only late-ticks">
            These ticks are of {dateWords(ticks.earlier)}, kept on this device alone. Start afresh before a
            new session.
          </p>
        )}
        <p class="actions needs-script">
          <button class="button first" type="button" onClick={() => print()}>
            Print the sheet
          </button>
          <button class="button" type="button" onClick={() => void copyLink()}>
            Copy the link
          </button>
          <button class="button" type="button" disabled={!ticks.any} onClick={ticks.startAfresh}>
            Start afresh
          </button>
        </p>
        <p class="screen-only copied aside" role="status">
          {said}
        </p>
        <p class="screen-only sheet-ways">
          {opened && <a href={page}>All checklists</a>}
          <a class="needs-script" href={other}>
            {isTools ? 'The list for the work' : 'The tools list'}
          </a>
          <a href={siteAddress('/safety/')}>Safety, before the first time</a>
        </p>
        <div class="sheet-columns">
          <div>
            {list.blanks.length > 0 && (
              <p class="blanks">
                {list.blanks.map((blank) => (
                  <span key={blank}>{blank}</span>
                ))}
              </p>
            )}
            {list.notes.length > 0 && (
              <div class="sheet-notes">
                <p class="aside">Notes by whoever made this link</p>
                <div class="said-by-club">
                  {list.notes.map((note, place) => (
                    <p key={place} dir="auto">
                      {note}
                    </p>
                  ))}
                </div>
              </div>
            )}
            {left.map((block) => (
              <Block key={block.id} block={block} ticks={ticks} level={level} />
            ))}
          </div>
          <div>
            {right.map((block) => (
              <Block key={block.id} block={block} ticks={ticks} level={level} />
            ))}
          </div>
        </div>
        {list.record && <PaperRecord record={list.record} carburettors={list.carburettors} />}
        <p class="aside sheet-foot">
          Evendraw checklist <b>{list.name}</b>, {list.edition}.{' '}
          {code &&
            `The code opens this list${code.whole ? '' : ', without heading and notes,'} and says whether it has changed: ${pageOnPaper()}. `}
          {(list.hasOwnHeading || list.notes.length > 0) &&
            'Heading and notes are by whoever made the link. '}
          Free to copy, CC BY 4.0.
        </p>
      </article>
    </>
  );
}
