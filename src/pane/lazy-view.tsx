// A view whose code is fetched after the pane has opened.
import type { ComponentType, JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { useWords } from './pane-context';

export interface LazyView {
  (): JSX.Element;
  /** Fetches the code; again where that failed before. */
  ready(): Promise<ComponentType>;
}

export function lazyView(load: () => Promise<ComponentType>): LazyView {
  let loaded: ComponentType | undefined;
  const ready = async () => {
    loaded ??= await load();
    return loaded;
  };
  function LazyComponent(): JSX.Element {
    const { opening } = useWords().frame;
    const [View, setView] = useState<ComponentType | undefined>(() => loaded);
    const [fault, setFault] = useState<Error>();
    useEffect(() => {
      if (View === undefined) ready().then(view => setView(() => view), setFault);
    }, []);
    // Thrown while drawing, it is told as any fault of a view is.
    if (fault !== undefined) throw fault;
    return View === undefined ? <p class="bw-quiet">{opening}</p> : <View />;
  }
  return Object.assign(LazyComponent, { ready });
}
