import type { ComponentChildren } from 'preact';

interface Props {
  /** Begins the ids of its parts. */
  readonly id: string;
  /** A verb and what is tried: `Turn one screw`. */
  readonly title: string;
  /** What it shows, before anything is touched. */
  readonly finding: string;
  /** What the present choice shows: read out when it changes. */
  readonly said: string;
  /** Stands before what it guards. */
  readonly before?: ComponentChildren;
  /** Sliders, choices and buttons; away where no script can answer them. */
  readonly controls: ComponentChildren;
  /** The figure, and tables beneath it. */
  readonly children: ComponentChildren;
}

/** Something to try within the text: the finding, the controls, the figure, and what it says now. */
export default function Explorable({ id, title, finding, said, before, controls, children }: Props) {
  return (
    <section class="explorable" id={id} aria-labelledby={`${id}-title`}>
      <p class="explorable-title" id={`${id}-title`}>
        {title}
      </p>
      <p>{finding}</p>
      {before}
      <div class="controls needs-script">{controls}</div>
      {children}
      <p class="said-now" role="status">
        {said}
      </p>
    </section>
  );
}
