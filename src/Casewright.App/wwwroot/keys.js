// Keys that work anywhere on a job's page, outside fields; panels that hold the focus; bringing what is chosen into view.
let handler = null;

export function listen(page) {
  stop();
  handler = (event) => {
    const field = event.target.closest('input:not([type="checkbox"], [type="radio"], [type="range"]), textarea, select, [contenteditable]');
    const undo = (event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z';
    if (field || document.querySelector('dialog:modal')) return;
    if (undo) {
      event.preventDefault();
      page.invokeMethodAsync('Key', event.shiftKey ? 'redo' : 'undo');
    } else if (!event.ctrlKey && !event.metaKey && !event.altKey && (/^[1-8?hp.,]$/.test(event.key) || event.key === 'Escape')) {
      page.invokeMethodAsync('Key', event.key);
    }
  };
  document.addEventListener('keydown', handler);
}

export function stop() {
  if (handler) document.removeEventListener('keydown', handler);
  handler = null;
}

// Opens a panel over the page: the focus stays in it, Escape closes it, and it goes back to where it was.
export function open(dialog, page) {
  if (!dialog || dialog.open) return;
  dialog.addEventListener('cancel', (event) => {
    event.preventDefault();
    page.invokeMethodAsync('Closed');
  });
  dialog.addEventListener('click', (event) => {
    if (event.target === dialog) page.invokeMethodAsync('Closed');
  });
  dialog.showModal();
}

export function reveal() {
  document.querySelector('.tape .here')?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  document.querySelector('.step .held, .step .place .subject.on')?.scrollIntoView({ block: 'nearest' });
}
