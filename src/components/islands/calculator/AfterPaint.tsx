import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/** What is not read first: drawn anew only once the rest has been painted, so that a key need not wait for it. */
export default function AfterPaint({ children }: { readonly children: ComponentChildren }) {
  const [drawn, setDrawn] = useState(children);
  useEffect(() => setDrawn(children), [children]);
  return <>{drawn}</>;
}
