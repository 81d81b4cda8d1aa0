// The line between sheet and panel: moved with the mouse, or with the arrow keys when it has the focus.
import { byId } from './dom';

const minPx = 320;
const stepPx = 24;

export function splitter(): void {
  const line = byId('splitter');
  const panel = byId('panel');
  const room = document.querySelector('main') as HTMLElement;

  function setWidth(wantedPx: number): void {
    const widthPx = Math.max(minPx, Math.min(wantedPx, room.clientWidth - minPx));
    room.style.setProperty('--beside', `${widthPx}px`);
    line.ariaValueNow = String(Math.round((100 * widthPx) / room.clientWidth));
  }

  line.addEventListener('pointerdown', ({ pointerId }) => line.setPointerCapture(pointerId));
  line.addEventListener('pointermove', ({ pointerId, clientX }) => {
    if (line.hasPointerCapture(pointerId)) setWidth(room.getBoundingClientRect().right - clientX);
  });
  line.addEventListener('keydown', ({ key }) => {
    const steps = { ArrowLeft: 1, ArrowRight: -1 }[key];
    if (steps !== undefined) setWidth(panel.clientWidth + steps * stepPx);
  });
}
