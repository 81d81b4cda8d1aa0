// Whether the pane is seen: what the page knows of itself until Excel tells, and Excel alone from then on.
import { afterEach, expect, it } from 'vitest';
import { onSeen } from '../../src/hosts/excel/visibility';

type Told = (message: { visibilityMode: string }) => void;

function page(visibilityState: string, innerWidth: number) {
  const listeners = new Map<string, Set<() => void>>();
  const target = {
    addEventListener: (name: string, listener: () => void) => void listeners.set(name, new Set([...(listeners.get(name) ?? []), listener])),
    removeEventListener: (name: string, listener: () => void) => void listeners.get(name)?.delete(listener),
  };
  const excel: { told?: Told; removed: number } = { removed: 0 };
  const seen = {
    document: { ...target, visibilityState },
    window: { ...target, innerWidth },
    Office: {
      VisibilityMode: { taskpane: 'Taskpane', hidden: 'Hidden' },
      addin: {
        onVisibilityModeChanged: async (told: Told) => {
          excel.told = told;
          return async () => void excel.removed++;
        },
      },
    },
  };
  Object.assign(globalThis, seen);
  return { ...seen, excel, fire: (name: string) => listeners.get(name)?.forEach(listener => listener()) };
}

afterEach(() => {
  for (const name of ['document', 'window', 'Office']) Reflect.deleteProperty(globalThis, name);
});

it('is not in a page that is hidden or has no width', () => {
  for (const [state, width, isSeen] of [
    ['visible', 320, true],
    ['hidden', 320, false],
    ['visible', 0, false],
  ] as const) {
    page(state, width);
    const told: boolean[] = [];
    onSeen(now => told.push(now));
    expect(told, `${state} ${width}`).toEqual([isSeen]);
  }
});

it('is what Excel tells, from its first word on', async () => {
  const { window, excel, fire } = page('visible', 0);
  const told: boolean[] = [];
  const stop = onSeen(now => told.push(now));
  window.innerWidth = 320;
  fire('resize');
  excel.told?.({ visibilityMode: 'Hidden' });
  fire('resize');
  fire('visibilitychange');
  excel.told?.({ visibilityMode: 'Taskpane' });
  expect(told).toEqual([false, true, false, true]);
  stop();
  await Promise.resolve();
  await Promise.resolve();
  expect(excel.removed).toBe(1);
});
