// A view whose code is fetched after the pane has opened, and its words too where they come later.
import { type ComponentType, createContext, type JSX } from 'preact';
import { useContext, useLayoutEffect, useState } from 'preact/hooks';
import type { LaterWords } from '../words/later';
import { usePane, useWords } from './pane-context';

const LaterContext = createContext<LaterWords | undefined>(undefined);

/** What a view says whose words come later. */
export function useLater(): LaterWords {
  const words = useContext(LaterContext);
  if (words === undefined) throw new Error('a view is shown before its words are there');
  return words;
}

export interface LazyView {
  (): JSX.Element;
  /** Fetches the code; again where that failed before. */
  ready(): Promise<ComponentType>;
}

/** @param isLater its words are fetched with it. */
export function lazyView(load: () => Promise<ComponentType>, isLater = false): LazyView {
  let loaded: ComponentType | undefined;
  const ready = async () => {
    loaded ??= await load();
    return loaded;
  };
  function LazyComponent(): JSX.Element {
    const { opening } = useWords().frame;
    const { later } = usePane();
    const [View, setView] = useState<ComponentType | undefined>(() => (isLater ? undefined : loaded));
    const [words, setWords] = useState<LaterWords>();
    const [fault, setFault] = useState<Error>();
    // what is seen is fetched before the rest is
    useLayoutEffect(() => {
      if (View !== undefined) return;
      Promise.all([ready(), isLater ? later() : undefined]).then(([view, said]) => {
        setWords(said);
        setView(() => view);
      }, setFault);
    }, []);
    // Thrown while drawing, it is told as any fault of a view is.
    if (fault !== undefined) throw fault;
    if (View === undefined) return <p class="bw-quiet">{opening}</p>;
    return isLater ? (
      <LaterContext.Provider value={words}>
        <View />
      </LaterContext.Provider>
    ) : (
      <View />
    );
  }
  return Object.assign(LazyComponent, { ready });
}
