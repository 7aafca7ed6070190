// Turns pointer moves over the drawing into millimetres of the room and tells the page.
export function attach(frame, page) {
  // A page that is being left may still be resized; there is nobody to tell then.
  const report = () => {
    if (frame.isConnected) page.invokeMethodAsync('Resized', frame.clientWidth, frame.clientHeight).catch(() => observer.disconnect());
    else observer.disconnect();
  };
  const observer = new ResizeObserver(report);
  observer.observe(frame);
  report();

  let held = null;
  let busy = false;
  let latest = null;

  const toRoom = (event) => {
    const svg = frame.querySelector('svg');
    const matrix = svg.getScreenCTM().inverse();
    const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix);
    return { x: point.x, y: point.y };
  };

  // One call at a time: moves that arrive meanwhile are folded into the newest.
  const send = async (message) => {
    latest = message;
    if (busy) return;
    busy = true;
    try {
      while (latest) {
        const next = latest;
        latest = null;
        await page.invokeMethodAsync('Dragged', next.key, next.x, next.y, next.fine, next.done, next.cancelled);
      }
    } finally {
      busy = false;
    }
  };

  const message = (event, done, cancelled) => ({ key: held.key, ...toRoom(event), fine: event.altKey, done, cancelled });

  frame.addEventListener('pointerdown', (event) => {
    const handle = event.target.closest('[data-drag]');
    if (!handle || event.button !== 0) return;
    event.preventDefault();
    handle.focus({ preventScroll: true });
    held = { key: handle.dataset.drag, id: event.pointerId, moved: false, x: event.clientX, y: event.clientY };
    frame.setPointerCapture(event.pointerId);
  });
  frame.addEventListener('pointermove', (event) => {
    if (!held || event.pointerId !== held.id) return;
    if (!held.moved && Math.hypot(event.clientX - held.x, event.clientY - held.y) < 3) return;
    held.moved = true;
    send(message(event, false, false));
  });
  const finish = (event, cancelled) => {
    if (!held || event.pointerId !== held.id) return;
    if (held.moved) send(message(event, !cancelled, cancelled));
    else if (!cancelled) pick(event);
    held = null;
  };
  // A press on a handle that moves nothing chooses what lies under it.
  const pick = (event) => {
    const under = document.elementsFromPoint(event.clientX, event.clientY).find((e) => e.dataset?.pick);
    if (under) page.invokeMethodAsync('Picked', under.dataset.pick);
  };
  frame.addEventListener('pointerup', (event) => finish(event, false));
  frame.addEventListener('pointercancel', (event) => finish(event, true));
  frame.addEventListener('keydown', (event) => {
    if (event.key === 'Escape' && held) {
      send({ key: held.key, x: 0, y: 0, fine: false, done: false, cancelled: true });
      held = null;
    }
    // Arrows move a handle and Space presses a button of the drawing; neither scrolls the page.
    if (/^(Arrow|Page| )/.test(event.key) && event.target.closest('[data-drag], [role="button"]')) event.preventDefault();
  });
}
