interface Props {
  readonly field: string;
  readonly why: string | undefined;
  readonly wrong: { readonly sentence: string } | undefined;
}

/** What stands between a question and its field: why it is asked, and what is wrong with the answer. */
export default function QuestionWords({ field, why, wrong }: Props) {
  return (
    <>
      {why !== undefined && (
        <p class="why" id={`${field}-why`}>
          {why}
        </p>
      )}
      {wrong && (
        <p class="wrong" id={`${field}-wrong`}>
          {wrong.sentence}
        </p>
      )}
    </>
  );
}
