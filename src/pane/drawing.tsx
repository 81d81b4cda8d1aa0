// A figure as wide as the pane. A narrow one has few of its words: tapped, or by its button, it is shown at the size that has them all.
import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { useWords } from './pane-context';

/** Width at which a figure has all its words: enlarged, and as a picture on the sheet. */
export const LARGE_PX = 760;
const MIN_PX = 280;

export interface MeasuredPlace {
  readonly place: { readonly current: HTMLDivElement | null };
  readonly widthPx: number;
}

/** The width of an element as it is laid out. */
export function useWidth(): MeasuredPlace {
  const place = useRef<HTMLDivElement>(null);
  const [widthPx, setWidth] = useState(MIN_PX);
  useEffect(() => {
    const { current } = place;
    if (current === null) return undefined;
    const observer = new ResizeObserver(([entry]) => setWidth(Math.max(MIN_PX, Math.floor(entry?.contentRect.width ?? 0))));
    observer.observe(current);
    return () => observer.disconnect();
  }, []);
  return { place, widthPx };
}

/** The browser's own dialog: Escape closes it, and the focus goes back to where it was. */
function Enlarged({ svg, words, onDone }: { readonly svg: string; readonly words: string; readonly onDone: () => void }): JSX.Element {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} class="bw-large" onClose={onDone} aria-label={words}>
      <form method="dialog">
        <button>{useWords().figure.close}</button>
      </form>
      <div class="bw-scroll" tabIndex={0} role="group" aria-label={words} dangerouslySetInnerHTML={{ __html: svg }} />
    </dialog>
  );
}

interface DrawingProps {
  readonly measured: MeasuredPlace;
  readonly svg: string;
  /** Shrunk to a narrow pane its letters could not be read: it keeps its size and scrolls. */
  readonly keepsSize?: boolean;
  /** The same figure at `LARGE_PX`. */
  readonly large: () => string;
  /** What it shows. */
  readonly words: string;
  /** What stands beneath it. */
  readonly children?: ComponentChildren;
}

export function Drawing({ measured: { place, widthPx }, svg, keepsSize = false, large, words, children }: DrawingProps): JSX.Element {
  const W = useWords().figure;
  const [isLarge, setIsLarge] = useState(false);
  const button = useRef<HTMLButtonElement>(null);
  const isNarrow = svg !== '' && widthPx < LARGE_PX;
  const enlarge = () => {
    // the focus comes back to it
    button.current?.focus();
    setIsLarge(true);
  };
  return (
    <>
      <div
        ref={place}
        class={`bw-drawing ${keepsSize ? 'bw-scroll' : 'bw-fitted'}`}
        tabIndex={keepsSize ? 0 : undefined}
        onClick={isNarrow ? enlarge : undefined}
        dangerouslySetInnerHTML={{ __html: svg }}
      />
      <div class="bw-switches">
        {children}
        {isNarrow && (
          <button ref={button} type="button" onClick={enlarge}>
            {W.enlarge}
          </button>
        )}
      </div>
      {isLarge && <Enlarged svg={large()} words={words} onDone={() => setIsLarge(false)} />}
    </>
  );
}
